/**
 * A wall of the zone, or the zone as a whole, to choose from.
 * @param props the choice
 * @param props.id id of the field
 * @param props.walls labels of the walls
 * @param props.wall the chosen one; empty for the zone as a whole
 * @param props.choose called with a label
 * @returns label and field
 */
export function WallChoice({
  id,
  walls,
  wall,
  choose,
}: {
  id: string;
  walls: readonly string[];
  wall: string;
  choose: (wall: string) => void;
}) {
  return (
    <p class="field">
      <label for={id}>Wall</label>
      <select
        id={id}
        value={wall}
        onChange={(event) => {
          choose(event.currentTarget.value);
        }}
      >
        <option value="">The whole zone</option>
        {walls.map((label) => (
          <option key={label} value={label}>
            {label}
          </option>
        ))}
      </select>
    </p>
  );
}
