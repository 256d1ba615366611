import { functionHost, type Bundle } from '../engine/bundle';

/**
 * Runs the built functions on this page.
 * @param folder address of the build
 * @returns the functions that functions.json lists
 * @throws {Error} where the build is not there or does not hold together
 */
export async function loadFunctions(folder: string): Promise<Bundle> {
  const host = functionHost();
  Object.assign(globalThis, { CustomFunctions: host.CustomFunctions });
  await new Promise<void>((resolve, reject) => {
    const script = document.createElement('script');
    script.src = `${folder}/functions.js`;
    script.onload = () => {
      resolve();
    };
    script.onerror = () => {
      reject(new Error(`${script.src} cannot be loaded. Build first: npm run build`));
    };
    document.head.append(script);
  });
  const listed = await fetch(`${folder}/functions.json`);
  return host.bundle(await listed.text());
}
