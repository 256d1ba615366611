import { useId } from 'preact/hooks';
import type { ZoneEstimate } from '../../src/estimate/schedule';
import type { System } from '../../src/quantity/systems';
import { amount } from '../../src/site/amount';
import { listed } from '../../src/site/named';
import type { WallRow } from '../../src/walls/wall-row';
import { layoutElevation, type DrawnWall } from './elevation-layout';
import { wallLabel } from './wall-label';
import { wallState, type WallState } from './wall-state';

const ON_SCREEN = { width: 272, mostHeight: 220, leastWallHeight: 4, mostWidth: 1600 };
// The width of a page that fits letter and A4 paper, margins and level numbers off.
const ON_PAPER = { width: 600, mostHeight: 300, leastWallHeight: 14, mostWidth: 600 };
const MARGIN = 20;
const EDGE = 2;

const stateNames: Readonly<Record<WallState, string>> = {
  washed: 'washed',
  governs: 'washed, sets the class',
  masked: 'masked',
};

/** What the picture of a zone shows. */
export interface ElevationProps {
  readonly zone: ZoneEstimate;
  readonly system: System;
  /** The walls that are worked on, for a picture on paper: its table is open, and the other walls are drawn faintly. */
  readonly onPaper?: ReadonlySet<WallRow>;
}

/**
 * A zone seen from the front, to scale: what is washed, what sets the class, what is masked. Pattern, words and a table
 * say the same as the picture.
 * @param props what it shows
 * @returns picture, key, what is not drawn, and the table
 */
export function Elevation({ zone, system, onPaper }: ElevationProps) {
  const id = useId();
  const { rows, name } = zone.zone;
  const room = onPaper ? ON_PAPER : ON_SCREEN;
  const { walls, levels, width, height, notDrawn } = layoutElevation(rows, room);
  const stateOf = (wall: DrawnWall) => wallState(wall.row, zone.governing);
  const fill = { masked: `url(#${id}-masked)`, governs: `url(#${id}-governs)`, washed: 'none' };
  const size = { width: width + MARGIN + EDGE, height: height + 2 * EDGE };
  return (
    <figure class="elevation">
      {walls.length > 0 && (
        <Scrolled wide={size.width > room.width + MARGIN + EDGE} label={`Elevation of ${name}`}>
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
              <text key={level.level} class="level" x={-6} y={level.y}>
                {level.level === 0 ? '?' : level.level}
              </text>
            ))}
            {walls.map((wall) => (
              <g
                key={wall.row.row}
                class={`wall ${stateOf(wall)}${onPaper && !onPaper.has(wall.row) ? ' other-day' : ''}`}
              >
                <title>{`${String(wall.number)}. ${wall.row.wall}, ${wall.row.material.name}: ${stateNames[stateOf(wall)]}`}</title>
                <path d={outline(wall)} fill={fill[stateOf(wall)]} />
                <Label wall={wall} />
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
      {walls.length > 0 &&
        (onPaper ? (
          <WallTable walls={walls} zone={zone} system={system} today={onPaper} />
        ) : (
          <details>
            <summary>The picture as a table</summary>
            <div class="scroll" role="region" aria-label="The picture as a table" tabIndex={0}>
              <WallTable walls={walls} zone={zone} system={system} />
            </div>
          </details>
        ))}
    </figure>
  );
}

function Label({ wall }: { wall: DrawnWall }) {
  const label = wallLabel(wall);
  if (label === undefined) return null;
  const { text, upright, x, y } = label;
  return (
    <text x={x} y={y} transform={upright ? `rotate(-90 ${String(x)} ${String(y)})` : undefined}>
      {text}
    </text>
  );
}

/** Along the top from left to right, along the foot back. */
function outline({ pieces, height }: DrawnWall): string {
  const at = (x: number, y: number): string => `${String(x)},${String(y)}`;
  const tops = pieces.flatMap(({ x, y, width }) => [at(x, y), at(x + width, y)]);
  const feet = pieces.flatMap(({ x, y, width }) => [at(x, y + height), at(x + width, y + height)]);
  return `M${[...tops, ...feet.reverse()].join('L')}Z`;
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
  today,
}: {
  walls: readonly DrawnWall[];
  zone: ZoneEstimate;
  system: System;
  today?: ReadonlySet<WallRow>;
}) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">No.</th>
          {today && <th scope="col">Today</th>}
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
            {today && <td>{today.has(row) ? 'yes' : ''}</td>}
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
  );
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
