import { useId } from 'preact/hooks';
import type { System } from '../../src/quantity/systems';

const SYSTEMS: readonly { readonly system: System; readonly label: string }[] = [
  { system: 'US', label: 'US: ft, ft², gal' },
  { system: 'SI', label: 'SI: m, m², L' },
];

/**
 * The choice of units.
 * @param props the choice
 * @param props.system the units chosen
 * @param props.choose takes others
 * @returns two radio buttons
 */
export function UnitsChoice({ system, choose }: { system: System; choose: (system: System) => void }) {
  const id = useId();
  return (
    <fieldset>
      <legend>Units</legend>
      {SYSTEMS.map((each) => (
        <label key={each.system} class="choice">
          <input
            type="radio"
            name={id}
            checked={each.system === system}
            onChange={() => {
              choose(each.system);
            }}
          />{' '}
          {each.label}
        </label>
      ))}
    </fieldset>
  );
}
