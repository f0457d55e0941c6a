/** Images that lie under plans: kept on this device beside the record, and never part of the site. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { ControlPoint } from './image_placing';
import type { Size } from './map_view_box';

export interface PlanImage extends Size {
  name: string;
  type: string;
  bytes: Uint8Array<ArrayBuffer>;
  points: [ControlPoint, ControlPoint];
  /** 0 to 1: how strongly it is shown. */
  strength: number;
}

interface PlanImages extends DBSchema {
  images: { key: string; value: PlanImage };
}

const types = ['image/png', 'image/jpeg'];
const largestBytes = 40 * 1024 * 1024;

let opening: Promise<IDBPDatabase<PlanImages>> | undefined;

function database(): Promise<IDBPDatabase<PlanImages>> {
  opening ??= openDB<PlanImages>('proofstone.plan_images', 1, {
    upgrade: (fresh) => void fresh.createObjectStore('images'),
  });
  opening.catch(() => (opening = undefined));
  return opening;
}

export async function planImage(key: string): Promise<PlanImage | undefined> {
  return (await database()).get('images', key);
}

export async function keepPlanImage(key: string, image: PlanImage): Promise<void> {
  await (await database()).put('images', image, key);
}

export async function dropPlanImage(key: string): Promise<void> {
  await (await database()).delete('images', key);
}

export type PlanImageRefusal = 'too large' | 'not readable';

/** A PNG or JPEG as the browser reads it. */
export async function readPlanImage(
  file: File,
): Promise<Omit<PlanImage, 'points' | 'strength'> | PlanImageRefusal> {
  if (file.size > largestBytes) return 'too large';
  if (!types.includes(file.type)) return 'not readable';
  try {
    const drawn = await createImageBitmap(file);
    const { width, height } = drawn;
    drawn.close();
    const bytes = new Uint8Array(await file.arrayBuffer());
    return { name: file.name, type: file.type, bytes, width, height };
  } catch {
    return 'not readable';
  }
}
