/** A photo of this device, unpacked to be shown. */
import { useEffect, useState } from 'preact/hooks';
import { recordDatabase } from '../record/record_access';

/** More than a screen shows at its nearest takes memory for nothing. */
const longestSide = 2400;

export type KeptPicture = ImageBitmap | 'elsewhere' | undefined;

async function unpacked(hash: string, side: number): Promise<KeptPicture> {
  const photo = await (await recordDatabase()).photo(hash);
  if (!photo) return 'elsewhere';
  const blob = new Blob([photo.bytes], { type: photo.type });
  const small = side > longestSide ? { resizeQuality: 'medium' as const } : undefined;
  const image = await createImageBitmap(blob);
  if (!small) return image;
  const resizeWidth = Math.round((image.width * longestSide) / side);
  const shown = await createImageBitmap(image, { resizeWidth, ...small });
  image.close();
  return shown;
}

/** Undefined while it is unpacked, "elsewhere" where this device does not have it. */
export function useKeptPicture(hash: string, side: number): KeptPicture {
  const [shown, setShown] = useState<{ hash: string; picture: KeptPicture } | undefined>(undefined);
  useEffect(() => {
    let wanted = true;
    let made: KeptPicture;
    unpacked(hash, side)
      .catch(() => 'elsewhere' as const)
      .then((picture) => {
        made = picture;
        if (wanted) setShown({ hash, picture });
        else if (typeof picture === 'object') picture.close();
      });
    return () => {
      wanted = false;
      if (typeof made === 'object') made.close();
    };
  }, [hash, side]);
  return shown?.hash === hash ? shown.picture : undefined;
}
