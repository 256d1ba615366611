import { useId } from 'preact/hooks';
import { nearestMaterials } from '../../src/rules/material-names';
import type { MaterialInForce } from '../../src/rules/read-factors';
import type { OwnNames } from './unknown-materials';

/**
 * One choice of material for each name that nobody knows.
 * @param props the names
 * @param props.unknown the names as they are typed
 * @param props.names what was chosen for them
 * @param props.materials the materials known
 * @param props.change takes other choices
 * @returns the choices; nearest materials first, none taken by itself
 */
export function MaterialNamesForm({
  unknown,
  names,
  materials,
  change,
}: {
  unknown: readonly string[];
  names: OwnNames;
  materials: readonly MaterialInForce[];
  change: (names: OwnNames) => void;
}) {
  const id = useId();
  return (
    <fieldset>
      <legend>Names that the material table does not have</legend>
      {unknown.map((name, place) => {
        const near = nearestMaterials(name, materials);
        const others = materials.map((material) => material.name).filter((other) => !near.includes(other));
        return (
          <p key={name} class="field">
            <label for={`${id}-${String(place)}`}>“{name}” is</label>
            <select
              id={`${id}-${String(place)}`}
              value={names.get(name) ?? ''}
              onChange={(event) => {
                const next = new Map(names);
                if (event.currentTarget.value === '') next.delete(name);
                else next.set(name, event.currentTarget.value);
                change(next);
              }}
            >
              <option value="">choose</option>
              {[...near, ...others].map((material) => (
                <option key={material} value={material}>
                  {material}
                </option>
              ))}
            </select>
          </p>
        );
      })}
      <p>What you choose is written into the table of factors, and holds for the whole workbook.</p>
    </fieldset>
  );
}
