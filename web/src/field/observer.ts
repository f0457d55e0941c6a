/** Who takes something down, and where their device is: what every observation carries. */
import type { Position } from '../record/position';
import { author } from '../settings';
import { positionNow } from './device_position';

/** Who is looking, if they gave their name, and where, if they let it be known. */
export function observer(): { who?: string; position?: Position } {
  return { ...(author.peek() ? { who: author.peek() } : {}), ...positionNow() };
}
