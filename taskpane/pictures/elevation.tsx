import { useId } from 'preact/hooks';
import type { ZoneEstimate } from '../../src/estimate/schedule';
import { show, type System } from '../../src/quantity/systems';
import { amount, rounded } from '../../src/site/amount';
import { listed } from '../../src/site/named';
import type { WallRow } from '../../src/walls/wall-row';
import { layoutElevation, type DrawnWall, type ElevationLayout, type Strip } from './elevation-layout';
import { wallLabel } from './wall-label';
import { wallState, type WallState } from './wall-state';

const ON_SCREEN = { width: 272, mostHeight: 220, labelHeight: 14, caption: 16 };
// The width of a page that fits letter and A4 paper, margins and level numbers off.
const ON_PAPER = { width: 600, mostHeight: 300, labelHeight: 14, caption: 16 };
const MARGIN = 20;
const EDGE = 2;
const CAPTION_RISE = 4;

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
  const layout = layoutElevation(zone.zone.rows, ON_SCREEN);
  const { drawn, notDrawn } = layout;
  return (
    <figure class="elevation">
      {drawn.length > 0 && (
        <div class={onPaper && 'screen-only'}>
          <Picture id={`${id}-screen`} {...{ layout, zone, system, onPaper }} />
        </div>
      )}
      {drawn.length > 0 && onPaper && (
        <div class="print-only">
          <Picture
            id={`${id}-paper`}
            layout={layoutElevation(zone.zone.rows, ON_PAPER)}
            {...{ zone, system, onPaper }}
          />
        </div>
      )}
      <figcaption>
        <ul class="key">
          {byState(drawn, zone).map(({ state, labels }) => (
            <li key={state}>
              <svg class={`wall ${state}`} width="22" height="14" aria-hidden="true">
                <Patterns id={`${id}-${state}`} />
                <rect x="1" y="1" width="20" height="12" fill={fillsOf(`${id}-${state}`)[state]} />
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
      {drawn.length > 0 &&
        (onPaper ? (
          <WallTable rows={drawn} zone={zone} system={system} today={onPaper} />
        ) : (
          <details>
            <summary>The picture as a table</summary>
            <div class="scroll" role="region" aria-label="The picture as a table" tabIndex={0}>
              <WallTable rows={drawn} zone={zone} system={system} />
            </div>
          </details>
        ))}
    </figure>
  );
}

interface PictureProps extends Omit<ElevationProps, 'onPaper'> {
  readonly onPaper: ReadonlySet<WallRow> | undefined;
  readonly id: string;
  readonly layout: ElevationLayout;
}

function Picture({ id, layout, zone, system, onPaper }: PictureProps) {
  const { strips, width, height, drawn } = layout;
  const fills = fillsOf(id);
  const size = { width: width + MARGIN + EDGE, height: height + 2 * EDGE };
  const part = ({ from, to }: Strip) =>
    `${rounded(show(from, 'length', system))} to ${amount(to, 'length', system)}`;
  return (
    <svg
      role="img"
      aria-labelledby={`${id}-title ${id}-desc`}
      width={size.width}
      height={size.height}
      viewBox={`${-MARGIN} ${-EDGE} ${size.width} ${size.height}`}
    >
      <title id={`${id}-title`}>
        Elevation of {zone.zone.name}, to scale
        {strips.length > 1 && `, in ${String(strips.length)} strips from left to right`}
      </title>
      <desc id={`${id}-desc`}>
        {byState(drawn, zone)
          .map(({ state, labels }) => `${stateNames[state]}: ${labels}.`)
          .join(' ')}
      </desc>
      <Patterns id={id} />
      {strips.map((strip) => (
        <g key={strip.from}>
          {strips.length > 1 && (
            <text class="strip" x={0} y={strip.y - CAPTION_RISE}>
              {part(strip)}
            </text>
          )}
          {strip.levels.map((level) => (
            <text key={level.level} class="level" x={-6} y={level.y}>
              {level.level === 0 ? '?' : level.level}
            </text>
          ))}
          {strip.walls.map((wall) => {
            const state = wallState(wall.row, zone.governing);
            return (
              <g
                key={wall.row.row}
                class={`wall ${state}${onPaper && !onPaper.has(wall.row) ? ' other-day' : ''}`}
              >
                <title>{`${String(wall.number)}. ${wall.row.wall}, ${wall.row.material.name}: ${stateNames[state]}`}</title>
                <path d={outline(wall)} fill={fills[state]} />
                <Label wall={wall} />
              </g>
            );
          })}
        </g>
      ))}
    </svg>
  );
}

function fillsOf(id: string): Readonly<Record<WallState, string>> {
  return { masked: `url(#${id}-masked)`, governs: `url(#${id}-governs)`, washed: 'none' };
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
  rows,
  zone,
  system,
  today,
}: {
  rows: readonly WallRow[];
  zone: ZoneEstimate;
  system: System;
  today?: ReadonlySet<WallRow>;
}) {
  return (
    <table>
      <thead>
        <tr>
          <th scope="col">No.</th>
          {today && (
            <th scope="col" class="print-only">
              Today
            </th>
          )}
          <th scope="col">Level</th>
          <th scope="col">Wall</th>
          <th scope="col">Material</th>
          <th scope="col">Length by height</th>
          <th scope="col">State</th>
        </tr>
      </thead>
      <tbody>
        {rows.map((row, index) => (
          <tr key={row.row}>
            <td>{index + 1}</td>
            {today && <td class="print-only">{today.has(row) ? 'yes' : ''}</td>}
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
  rows: readonly WallRow[],
  { governing }: ZoneEstimate,
): { state: WallState; labels: string }[] {
  return (['governs', 'masked', 'washed'] as const)
    .map((state) => ({
      state,
      labels: listed(rows.filter((row) => wallState(row, governing) === state).map(({ wall }) => wall)),
    }))
    .filter(({ labels }) => labels !== '');
}
