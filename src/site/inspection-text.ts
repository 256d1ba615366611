import type { AgreedSample, Inspection, PunchItem, SecondClean, Signed } from './inspection';
import { listOf, objectOf, textOf, timeOf, unreadable, yesOrNoOf } from './kept-values';

/**
 * What is kept of the inspection of a zone. A zone kept before an inspection was known holds none.
 * @param zone what was kept of the zone
 * @param at where it stands, in words
 * @returns what is there of it
 * @throws {WashdownError} saying which part cannot be read
 */
export function inspectionOf(zone: Readonly<Record<string, unknown>>, at: string): Inspection {
  const { agreed, punch, secondCleans } = zone;
  return {
    ...(agreed === undefined ? {} : { agreed: agreedOf(agreed, `${at}, sample`) }),
    ...(punch === undefined ? {} : { punch: itemsOf(punch, `${at}, punch list`, punchItemOf) }),
    ...(secondCleans === undefined
      ? {}
      : { secondCleans: itemsOf(secondCleans, `${at}, second clean`, secondCleanOf) }),
  };
}

function itemsOf<Item>(raw: unknown, at: string, itemOf: (raw: unknown, at: string) => Item): Item[] {
  return listOf(raw, at).map((item, index) => itemOf(item, `${at} ${String(index + 1)}`));
}

function agreedOf(raw: unknown, at: string): AgreedSample {
  const agreed = objectOf(raw, at);
  const text = (name: string): string => textOf(agreed[name], `${at}, ${name}`);
  return {
    approvedBy: text('approvedBy'),
    on: text('on'),
    distance: text('distance'),
    light: text('light'),
    dry: yesOrNoOf(agreed['dry'], `${at}, dry`),
    ...signedOf(agreed, at),
  };
}

function punchItemOf(raw: unknown, at: string): PunchItem {
  const item = objectOf(raw, at);
  const { closed, photo } = item;
  return {
    wall: textOf(item['wall'], `${at}, wall`),
    what: textOf(item['what'], `${at}, what`),
    ...(photo === undefined ? {} : { photo: textOf(photo, `${at}, photo`) }),
    ...signedOf(item, at),
    ...(closed === undefined ? {} : { closed: signedOf(objectOf(closed, `${at}, closed`), `${at}, closed`) }),
  };
}

function secondCleanOf(raw: unknown, at: string): SecondClean {
  const clean = objectOf(raw, at);
  const hours = clean['hours'];
  if (typeof hours !== 'number' || !(hours > 0)) throw unreadable(`${at}, hours is not a number above 0`);
  return {
    wall: textOf(clean['wall'], `${at}, wall`),
    hours,
    why: textOf(clean['why'], `${at}, why`),
    ...signedOf(clean, at),
  };
}

function signedOf(raw: Readonly<Record<string, unknown>>, at: string): Signed {
  return { who: textOf(raw['who'], `${at}, who`), when: timeOf(raw['when'], `${at}, when`) };
}
