/** The packages that files belong to, each folder once. */
export function packagesOf(root: string, files: readonly string[]): string[];
/** Folders of the packages that the add-in itself ships. */
export function shippedPackages(root: string): string[];
/** The licence notices of packages, as one text. */
export function noticesOf(folders: readonly string[]): string;
