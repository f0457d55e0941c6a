/** What size marker boards were printed in, as looks of the site and other photos state it. */
import type { SiteState } from '../site_state';
import type { Board, MeasuredPhoto } from './photo_draft';

/** Each edge that is stated of a board, once. */
export function statedEdges(
  looks: SiteState['looks'],
  photos: readonly MeasuredPhoto[],
  { number, marker_numbers }: Board,
): string[] {
  const own = photos.flatMap(({ scale }) =>
    scale.boards.filter((board) => board.number === number).map(({ edge }) => edge),
  );
  const kept = Object.values(looks ?? {})
    .flatMap(({ pictures }) => pictures ?? [])
    .flatMap(({ boards }) => boards ?? [])
    .filter(({ markers }) => markers.some((marker) => marker_numbers.includes(marker.number)))
    .map(({ edge }) => edge);
  return [...new Set([...own, ...kept])].filter((edge) => edge !== '');
}
