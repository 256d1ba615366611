import { useId } from 'preact/hooks';
import type { NamedWalls } from '../../src/site/known-zones';
import { itemsOpenWords } from '../../src/site/open-items';
import { isAllDone, standingWords, type ZoneStanding } from '../../src/site/zone-standing';

/**
 * The zones with how far each is, one of them chosen; where that one is done it leads to the next.
 * @param props the zones
 * @param props.zones their names and walls
 * @param props.standings how far each is, by name
 * @param props.zone name of the chosen one
 * @param props.choose chooses one
 * @returns a choice, and what is said of a zone that is done
 */
export function ZoneChoice({
  zones,
  standings,
  zone,
  choose,
}: {
  zones: readonly NamedWalls[];
  standings: ReadonlyMap<string, ZoneStanding>;
  zone: string;
  choose: (zone: NamedWalls | undefined) => void;
}) {
  const id = useId();
  const words = (name: string) => {
    const standing = standings.get(name);
    return standing ? standingWords(standing) : '';
  };
  const own = standings.get(zone);
  const goOn = zones.find(({ zone: name }) => standings.get(name)?.next !== undefined);
  return (
    <>
      <p class="field">
        <label for={`${id}-zone`}>Zone</label>
        <select
          id={`${id}-zone`}
          value={zone}
          onChange={(event) => {
            choose(zones.find((candidate) => candidate.zone === event.currentTarget.value));
          }}
        >
          {zones.map(({ zone: name }) => (
            <option key={name} value={name}>
              {name}: {words(name)}
            </option>
          ))}
        </select>
      </p>
      <p class="print-only">Zone: {zone}</p>
      {own && isAllDone(own) && (
        <section class="notice done" aria-label="The zone is done">
          <p>
            Every step of {zone} is done{own.openItems > 0 ? `, ${itemsOpenWords(own.openItems)}` : ''}.
          </p>
          {goOn ? (
            <button
              type="button"
              onClick={() => {
                choose(goOn);
              }}
            >
              Go on with {goOn.zone}
            </button>
          ) : (
            <p>No other zone has a step that can be done now.</p>
          )}
        </section>
      )}
    </>
  );
}
