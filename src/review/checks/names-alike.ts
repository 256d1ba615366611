import { comparable } from '../../quantity/cell';
import type { WallRow } from '../../walls/wall-row';
import type { Check, Checked, Finding } from '../finding';

const NAMED = 5;

const WHY: Readonly<Record<'wall' | 'zone', string>> = {
  zone: 'Invisible characters, or characters that only look like others, make them separate zones, each with its own cleaner and set-up',
  wall: 'Invisible characters, or characters that only look like others, hide that a wall may be listed twice',
};

// Characters that are not to be seen: of no width, marks of the direction of text, fillers.
const UNSEEN = /[\p{Cf}\p{Default_Ignorable_Code_Point}]/gu;
const SEEN_AS_IT_IS = /[\p{L}\p{N}\p{P}\p{S} ]/u;

/** Zones that are priced apart because of a character that nobody sees. */
export const zonesAlike = alike('zone', (name) => comparable(seen(name)));

/** Walls of which one may be listed twice. Capitals and small letters are seen to differ. */
export const labelsAlike = alike('wall', seen);

function alike(of: 'wall' | 'zone', form: (name: string) => string): Check {
  return (checked): Finding[] => {
    const groups = groupsOf(checked, of, form);
    if (groups.length === 0) return [];
    const where = groups.slice(0, NAMED).map((rows) => rows.map((row) => inWords(row, of)).join(' and '));
    const more = groups.length > NAMED ? ` and ${String(groups.length - NAMED)} more` : '';
    const many = groups.reduce((sum, rows) => sum + rows.length, 0);
    return [
      {
        check: 'names alike',
        what: `${String(many)} ${of === 'zone' ? 'zones' : 'labels'} that look the same are different ones`,
        where: where.join('; ') + more,
        rows: groups.flat().map(({ row }) => row),
        column: of,
        why: WHY[of],
        todo: 'Type the name again in each of the rows, or give them names that look different',
        source: 'rows',
      },
    ];
  };
}

/** The first row of each name, of the names that have one form and concern a zone that is asked for. */
function groupsOf({ zones, job }: Checked, of: 'wall' | 'zone', form: (name: string) => string): WallRow[][] {
  const asked = new Set(zones.map(({ zone }) => zone.name));
  const groups = new Map<string, Map<string, WallRow>>();
  for (const { zone } of job) {
    for (const row of zone.rows) {
      const key = form(row[of]);
      const group = groups.get(key) ?? new Map<string, WallRow>();
      if (!group.has(row[of])) groups.set(key, group.set(row[of], row));
    }
  }
  return [...groups.values()].flatMap((group) => {
    const rows = [...group.values()].sort((a, b) => a.row - b.row);
    return rows.length > 1 && rows.some(({ zone }) => asked.has(zone)) ? [rows] : [];
  });
}

/** What is seen of a name. */
function seen(name: string): string {
  // Most names are plain, and all of them are asked for.
  const plain = /[^ -~]/.test(name) ? name.normalize('NFKC').replace(UNSEEN, '') : name;
  return plain.includes(' ') ? plain.replace(/\s+/g, ' ').trim() : plain;
}

function inWords(row: WallRow, of: 'wall' | 'zone'): string {
  return `row ${String(row.row)} "${spelled(row[of])}"`;
}

/** A name with the codes of the characters that are not seen as they are. */
function spelled(name: string): string {
  const letters = Array.from(name, (each) => (isSeenAsItIs(each) ? each : `[U+${codeOf(each)}]`));
  return letters.join('');
}

function isSeenAsItIs(character: string): boolean {
  return SEEN_AS_IT_IS.test(character) && character.normalize('NFKC').replace(UNSEEN, '') === character;
}

function codeOf(character: string): string {
  return (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
}
