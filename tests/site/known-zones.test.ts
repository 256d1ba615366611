import { describe, expect, it } from 'vitest';
import { knownZones } from '../../src/site/known-zones';

const zone = (name: string, ...walls: string[]) => ({ zone: name, walls });
const names = (kept: ReturnType<typeof zone>[], present: ReturnType<typeof zone>[]) =>
  [...knownZones(kept, present)].map(([now, old]) => `${old.zone} -> ${now}`).sort();

describe('zones known again', () => {
  it('by name and walls', () => {
    expect(names([zone('A', 'a')], [zone('A', 'a')])).toEqual(['A -> A']);
  });

  it('renamed: by the walls', () => {
    expect(names([zone('A', 'a', 'b'), zone('B', 'c')], [zone('South', 'a', 'b'), zone('B', 'c')])).toEqual([
      'A -> South',
      'B -> B',
    ]);
  });

  it('two zones that swapped their names keep their own walls', () => {
    expect(names([zone('A', 'a'), zone('B', 'b')], [zone('B', 'a'), zone('A', 'b')])).toEqual([
      'A -> B',
      'B -> A',
    ]);
  });

  it('walls renamed or mostly exchanged: by the name, case and spacing ignored', () => {
    expect(names([zone('South side', 'a', 'b')], [zone('SOUTH  SIDE', 'x', 'y')])).toEqual([
      'South side -> SOUTH  SIDE',
    ]);
  });

  it('a zone cut in halves stays with the half that kept the name', () => {
    const kept = [zone('A', 'a', 'b', 'c', 'd')];
    expect(names(kept, [zone('New', 'a', 'b'), zone('A', 'c', 'd')])).toEqual(['A -> A']);
  });

  it('takes no progress twice, and none from a stranger', () => {
    expect(names([zone('A', 'a', 'b', 'c')], [zone('X', 'a', 'b', 'c'), zone('Y', 'q')])).toEqual(['A -> X']);
    expect(names([zone('A', 'a', 'b', 'c')], [zone('X', 'a', 'q', 'r')])).toEqual([]);
    expect(names([], [zone('X', 'a')])).toEqual([]);
  });
});
