/**
 * What an error says. One that comes from another window is no `Error` of this one, so its message alone counts.
 * @param error what was thrown
 * @param otherwise what to say where it says nothing
 * @returns a sentence, or what was given for it
 */
export function messageOf(error: unknown, otherwise: string): string {
  const { message } = (error ?? {}) as { readonly message?: unknown };
  return typeof message === 'string' ? message : otherwise;
}
