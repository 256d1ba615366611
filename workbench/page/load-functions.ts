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
  // The engine calls its functions at once, so all are at hand before the first.
  for (const file of ['functions.js', 'functions-more.js']) await loadScript(`${folder}/${file}`);
  const listed = await fetch(`${folder}/functions.json`);
  return host.bundle(await listed.text());
}

function loadScript(address: string): Promise<void> {
  return new Promise<void>((resolve, reject) => {
    const script = document.createElement('script');
    script.src = address;
    script.onload = () => {
      resolve();
    };
    script.onerror = () => {
      reject(new Error(`${script.src} cannot be loaded. Build first: npm run build`));
    };
    document.head.append(script);
  });
}
