import type { PanelProps } from '../panel-props';

/**
 * Placeholder.
 * @param props what the panel works on
 * @returns its heading
 */
export function StepsPanel(props: PanelProps) {
  return <h2>steps {'table' in props.source.walls ? props.source.walls.table : ''}</h2>;
}
