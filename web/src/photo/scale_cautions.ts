/** What the engine says against the scale of a photo, before anything is measured on it. */
import { useEffect, useState } from 'preact/hooks';
import type { MeasuredPhoto } from './photo_draft';
import { pictureOf } from './photo_look';
import { vision } from './vision';

/** None until it has said; none where it cannot: the finding says them as well. */
export function useScaleCautions(photo: MeasuredPhoto, number: number, lies: string): string[] {
  const [cautions, setCautions] = useState<string[]>([]);
  const { taken, scale, outlines } = photo;
  useEffect(() => {
    let wanted = true;
    vision.cautions(lies, pictureOf(photo), number).then(
      (said) => wanted && setCautions(said),
      () => wanted && setCautions([]),
    );
    return () => {
      wanted = false;
    };
  }, [taken.file, JSON.stringify(scale), outlines.length, number, lies]);
  return cautions;
}
