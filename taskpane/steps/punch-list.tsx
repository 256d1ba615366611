import type { ComponentChildren } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { PunchItem } from '../../src/site/inspection';
import { punchWords } from './punch-words';
import { WallChoice } from './wall-choice';

/**
 * The punch list of a zone: by wall, what has to be put right, and whether it is done.
 * @param props what it shows and does
 * @param props.items the items
 * @param props.walls labels of the walls of the zone
 * @param props.add puts an item on the list; false where it was not signed
 * @param props.close marks an item as done, or as open again
 * @param props.clean offers the entry of the second clean that an item asks for; left out where none can be recorded
 * @param props.formOf the form of that entry, where it is offered
 * @param props.say speaks a sentence
 * @returns the list and the fields for a new item
 */
export function PunchList({
  items,
  walls,
  add,
  close,
  clean,
  formOf,
  say,
}: {
  items: readonly PunchItem[];
  walls: readonly string[];
  add: (found: Pick<PunchItem, 'wall' | 'what' | 'photo'>) => boolean;
  close: (item: PunchItem, done: boolean) => void;
  clean?: ((item: PunchItem) => void) | undefined;
  formOf: (item: PunchItem) => ComponentChildren;
  say: (sentence: string) => void;
}) {
  const id = useId();
  const [wall, setWall] = useState('');
  const [what, setWhat] = useState('');
  const [photo, setPhoto] = useState('');
  const open = items.filter(({ closed }) => closed === undefined).length;
  return (
    <section class="inspection" aria-labelledby={`${id}-title`}>
      <h4 id={`${id}-title`}>Punch list</h4>
      <p>
        {items.length === 0 ? 'No item yet.' : `${String(open)} open, ${String(items.length - open)} done.`}
      </p>
      <ul class="punch-list">
        {items.map((item) => (
          <li key={`${item.when}${item.wall}${item.what}`}>
            <label>
              <input
                type="checkbox"
                checked={item.closed !== undefined}
                onChange={(event) => {
                  // The tick follows what the workbook keeps, not the click.
                  event.currentTarget.checked = item.closed !== undefined;
                  close(item, item.closed === undefined);
                }}
              />{' '}
              {punchWords(item)}
            </label>{' '}
            {formOf(item) ??
              (clean && item.closed === undefined && (
                <button
                  type="button"
                  class="not-printed"
                  onClick={() => {
                    clean(item);
                  }}
                >
                  Record its second clean
                </button>
              ))}
          </li>
        ))}
      </ul>
      <div class="not-printed">
        <WallChoice id={`${id}-wall`} walls={walls} wall={wall} choose={setWall} />
        <p class="field">
          <label for={`${id}-what`}>What to fix</label>
          <input
            id={`${id}-what`}
            value={what}
            onInput={(event) => {
              setWhat(event.currentTarget.value);
            }}
          />
        </p>
        <p class="field">
          <label for={`${id}-photo`}>Photo, if any (file name or number on the camera)</label>
          <input
            id={`${id}-photo`}
            value={photo}
            onInput={(event) => {
              setPhoto(event.currentTarget.value);
            }}
          />
        </p>
        <button
          type="button"
          onClick={() => {
            const of = photo.trim() === '' ? {} : { photo: photo.trim() };
            if (what.trim() === '') say('Say what to fix first.');
            else if (add({ wall, what: what.trim(), ...of })) {
              setWhat('');
              setPhoto('');
            }
          }}
        >
          Add to the punch list
        </button>
      </div>
    </section>
  );
}
