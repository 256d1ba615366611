import { useId } from 'preact/hooks';
import type { ZoneEstimate } from '../../src/estimate/schedule';
import type { System } from '../../src/quantity/systems';
import { amount } from '../../src/site/amount';
import { listed } from '../../src/site/named';
import { layoutElevation, type DrawnWall } from './elevation-layout';
import { wallState, type WallState } from './wall-state';

const ROOM = { width: 272, mostHeight: 220, leastWallHeight: 6, mostWidth: 1600 };
const MARGIN = 20;
const EDGE = 2;
// Mean width of a letter at the size of the style sheet; a label that may not fit gives way to its number.
const LETTER = 6.4;
const LINE = 13;

const stateNames: Readonly<Record<WallState, string>> = {
  washed: 'washed',
  governs: 'washed, sets the class',
  masked: 'masked',
};

/**
 * A zone seen from the front, to scale: what is washed, what sets the class, what is masked. Pattern, words and a table
 * say the same as the picture.
 * @param props the zone
 * @param props.zone its estimate
 * @param props.system the display system
 * @returns picture, key, what is not drawn, and the table
 */
export function Elevation({ zone, system }: { zone: ZoneEstimate; system: System }) {
  const id = useId();
  const { rows, name } = zone.zone;
  const { walls, levels, width, height, notDrawn } = layoutElevation(rows, ROOM);
  const stateOf = (wall: DrawnWall) => wallState(wall.row, zone.governing);
  const fill = { masked: `url(#${id}-masked)`, governs: `url(#${id}-governs)`, washed: 'none' };
  const size = { width: width + MARGIN + EDGE, height: height + 2 * EDGE };
  return (
    <figure class="elevation">
      {walls.length > 0 && (
        <Scrolled wide={size.width > ROOM.width + MARGIN + EDGE} label={`Elevation of ${name}`}>
          <svg
            role="img"
            aria-labelledby={`${id}-title ${id}-desc`}
            width={size.width}
            height={size.height}
            viewBox={`${-MARGIN} ${-EDGE} ${size.width} ${size.height}`}
          >
            <title id={`${id}-title`}>Elevation of {name}, to scale</title>
            <desc id={`${id}-desc`}>
              {byState(walls, zone)
                .map(({ state, labels }) => `${stateNames[state]}: ${labels}.`)
                .join(' ')}
            </desc>
            <Patterns id={id} />
            {levels.map((level) => (
              <text key={level.level} class="level" x={-6} y={level.y + level.height / 2}>
                {level.level === 0 ? '?' : level.level}
              </text>
            ))}
            {walls.map((wall) => (
              <g key={wall.row.row} class={`wall ${stateOf(wall)}`}>
                <title>{`${String(wall.number)}. ${wall.row.wall}, ${wall.row.material.name}: ${stateNames[stateOf(wall)]}`}</title>
                <rect
                  x={wall.x}
                  y={wall.y}
                  width={wall.width}
                  height={wall.height}
                  fill={fill[stateOf(wall)]}
                />
                <text x={wall.x + wall.width / 2} y={wall.y + wall.height / 2}>
                  {labelOf(wall)}
                </text>
              </g>
            ))}
          </svg>
        </Scrolled>
      )}
      <figcaption>
        <ul class="key">
          {byState(walls, zone).map(({ state, labels }) => (
            <li key={state}>
              <svg class={`wall ${state}`} width="22" height="14" aria-hidden="true">
                <rect x="1" y="1" width="20" height="12" fill={fill[state]} />
              </svg>
              <span>
                {stateNames[state]}: {labels}
              </span>
            </li>
          ))}
        </ul>
        {notDrawn.length > 0 && (
          <p>Not drawn, because area or height is not stated: {listed(notDrawn.map(({ wall }) => wall))}.</p>
        )}
      </figcaption>
      {walls.length > 0 && <WallTable walls={walls} zone={zone} system={system} />}
    </figure>
  );
}

function Scrolled({
  wide,
  label,
  children,
}: {
  wide: boolean;
  label: string;
  children: preact.ComponentChildren;
}) {
  return wide ? (
    // A wide picture is scrolled, by keyboard too.
    <div class="scroll" role="region" aria-label={`${label}, scrolls sideways`} tabIndex={0}>
      {children}
    </div>
  ) : (
    <div>{children}</div>
  );
}

function Patterns({ id }: { id: string }) {
  return (
    <defs>
      <pattern
        id={`${id}-masked`}
        class="pattern"
        width="6"
        height="6"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <line x1="0" y1="0" x2="0" y2="6" />
      </pattern>
      <pattern id={`${id}-governs`} class="pattern" width="7" height="7" patternUnits="userSpaceOnUse">
        <circle cx="3.5" cy="3.5" r="1.1" />
      </pattern>
    </defs>
  );
}

function WallTable({
  walls,
  zone,
  system,
}: {
  walls: readonly DrawnWall[];
  zone: ZoneEstimate;
  system: System;
}) {
  return (
    <details>
      <summary>The picture as a table</summary>
      <div class="scroll" role="region" aria-label="The picture as a table" tabIndex={0}>
        <table>
          <thead>
            <tr>
              <th scope="col">No.</th>
              <th scope="col">Level</th>
              <th scope="col">Wall</th>
              <th scope="col">Material</th>
              <th scope="col">Length by height</th>
              <th scope="col">State</th>
            </tr>
          </thead>
          <tbody>
            {walls.map(({ row, number }) => (
              <tr key={row.row}>
                <td>{number}</td>
                <td>{row.level === 0 ? 'not stated' : row.level}</td>
                <th scope="row">{row.wall}</th>
                <td>{row.material.name}</td>
                <td>
                  {amount(row.area / row.height, 'length', system)} by {amount(row.height, 'length', system)}
                </td>
                <td>{stateNames[wallState(row, zone.governing)]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </details>
  );
}

function labelOf({ row, number, width, height }: DrawnWall): string {
  if (height < LINE) return '';
  return [row.wall, String(number)].find((text) => text.length * LETTER <= width) ?? '';
}

function byState(
  walls: readonly DrawnWall[],
  { governing }: ZoneEstimate,
): { state: WallState; labels: string }[] {
  return (['governs', 'masked', 'washed'] as const)
    .map((state) => ({
      state,
      labels: listed(
        walls.filter(({ row }) => wallState(row, governing) === state).map(({ row }) => row.wall),
      ),
    }))
    .filter(({ labels }) => labels !== '');
}
