/**
 * Length of the edge of a wall: of a rectangle of its height, or of a square where none is stated. Source: geometry.
 * @param area face area, m2
 * @param height wall height, m; 0 where it is not stated
 * @returns length in m
 */
export function edgeLength(area: number, height: number): number {
  return height > 0 ? 2 * (area / height + height) : 4 * Math.sqrt(area);
}

/**
 * Length of the edges of openings, where none is stated that of their square, the least possible. Source: geometry.
 * @param openings area of the openings, m2
 * @param perimeter their perimeter as stated, m; 0 where it is not
 * @returns length in m
 */
export function openingsEdge(openings: number, perimeter: number): number {
  return perimeter > 0 ? perimeter : edgeLength(openings, 0);
}
