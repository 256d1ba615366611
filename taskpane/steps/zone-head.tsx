import { useMemo, useState } from 'preact/hooks';
import type { ZoneEstimate } from '../../src/estimate/schedule';
import { LABEL_FIRST } from '../../src/rules/cautions';
import { classInWords, className } from '../../src/rules/cleaner-classes';
import type { FactorsInForce } from '../../src/rules/read-factors';
import { Elevation } from '../pictures/elevation';
import { HoursBars } from '../pictures/hours-bars';
import { Disclosure } from '../shared/disclosure';

/**
 * What a zone is washed with and why, its picture and its hours.
 * @param props the zone
 * @param props.zone its estimate
 * @param props.notice what is said of the zone as a whole
 * @param props.factors the factors in force
 * @returns the head of its checklist
 */
export function ZoneHead({
  zone,
  notice,
  factors,
}: {
  zone: ZoneEstimate;
  notice: string;
  factors: FactorsInForce;
}) {
  const { system } = factors;
  const { governing, classToUse } = zone;
  const afterwards = [...new Set(zone.laterClasses)];
  // A zone of thousands of walls is not drawn again while a name is typed.
  const elevation = useMemo(() => <Elevation zone={zone} system={system} />, [zone, system]);
  const [picture, setPicture] = useState(true);
  const [hours, setHours] = useState(false);
  return (
    <>
      <p class="first-line">{LABEL_FIRST} See Cautions.</p>
      {governing && classToUse !== undefined && (
        <p>
          Class {classToUse}, {className(classToUse)}. At most {classInWords(governing.ceiling)}, because of{' '}
          {governing.governors.map(({ name }) => name).join(', ')}.
        </p>
      )}
      {afterwards.length > 0 && (
        <p>
          Masked masonry afterwards:{' '}
          {afterwards.map((of) => `class ${String(of)}, ${className(of)}`).join('; ')}.
        </p>
      )}
      {notice !== '' && <p class="notice">{notice}</p>}
      <Disclosure
        title="Picture of the zone"
        open={picture}
        toggle={() => {
          setPicture(!picture);
        }}
      >
        {elevation}
      </Disclosure>
      <Disclosure
        title="Labor-hours by part"
        open={hours}
        toggle={() => {
          setHours(!hours);
        }}
      >
        <HoursBars totals={zone.totals} finding={zone.finding} />
      </Disclosure>
    </>
  );
}
