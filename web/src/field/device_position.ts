/**
 * Where this device is, where its user lets that be taken down. It is looked for while a form is
 * open; nothing waits for it, and what is not found in time is left out.
 */
import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import type { Position } from '../record/position';
import { utcNow } from '../record/revision';
import { takesPosition } from '../settings';

export type PositionState = 'off' | 'looking' | 'found' | 'refused' | 'not found' | 'not available';

/** What the screen says of the position. */
export const positionState = signal<PositionState>('off');

/** An older fix is of another place: people walk. */
const oldestMs = 2 * 60_000;
/** Of one attempt; after it the device goes on looking. */
const patienceMs = 20_000;

let latest: { position: Position; at: number } | undefined;

/** A fix as the document holds it; undefined where the device gives no numbers. */
export function positionFrom(
  {
    latitude,
    longitude,
    accuracy,
  }: Pick<GeolocationCoordinates, 'latitude' | 'longitude' | 'accuracy'>,
  timestamp: number,
): Position | undefined {
  if (!Number.isFinite(latitude) || !Number.isFinite(longitude)) return undefined;
  const known = Number.isFinite(accuracy) && accuracy > 0;
  return {
    latitude: `${latitude.toFixed(6)}°`,
    longitude: `${longitude.toFixed(6)}°`,
    ...(known ? { accuracy: `${Math.max(1, Math.round(accuracy))} m` } : {}),
    when: utcNow(new Date(timestamp)),
  };
}

/** The field `position` of what is taken down now; nothing where it is not known or not wanted. */
export function positionNow(): { position?: Position } {
  const fresh = latest !== undefined && Date.now() - latest.at < oldestMs;
  return takesPosition.peek() && fresh && latest ? { position: latest.position } : {};
}

function look(): () => void {
  if (!('geolocation' in navigator)) {
    positionState.value = 'not available';
    return () => undefined;
  }
  positionState.value = 'looking';
  let open = true;
  const watch = navigator.geolocation.watchPosition(
    ({ coords, timestamp }) => {
      if (!open) return;
      const position = positionFrom(coords, timestamp);
      if (position) latest = { position, at: timestamp };
      positionState.value = position ? 'found' : 'not found';
    },
    ({ code, PERMISSION_DENIED }) => {
      if (!open) return;
      positionState.value = code === PERMISSION_DENIED ? 'refused' : 'not found';
    },
    { enableHighAccuracy: true, maximumAge: oldestMs / 4, timeout: patienceMs },
  );
  return () => {
    open = false;
    navigator.geolocation.clearWatch(watch);
    // What the next form says is of its own looking.
    positionState.value = 'off';
  };
}

/** Looks for the position while the screen that asks for it is open. */
export function usePosition(): void {
  const wanted = takesPosition.value;
  useEffect(() => {
    if (wanted) return look();
    latest = undefined;
    positionState.value = 'off';
    return undefined;
  }, [wanted]);
}
