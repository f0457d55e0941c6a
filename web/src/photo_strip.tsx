/** Photos that are kept as evidence, side by side; each opens to the whole of it. */
import { useEffect, useState } from 'preact/hooks';
import { recordDatabase } from './record/record_access';
import { strings } from './strings';

const words = strings.photos;

type Shown = { small: string; whole: string } | 'elsewhere';

/** Addresses of a photo in this page; "elsewhere" where another device has it. */
function usePhoto(hash: string): Shown | undefined {
  const [shown, setShown] = useState<Shown | undefined>(undefined);
  useEffect(() => {
    let addresses: string[] = [];
    let wanted = true;
    recordDatabase()
      .then((record) => record.photo(hash))
      .then((photo) => {
        if (!wanted) return;
        if (!photo) {
          setShown('elsewhere');
          return;
        }
        const small = URL.createObjectURL(new Blob([photo.small], { type: 'image/jpeg' }));
        const whole = URL.createObjectURL(new Blob([photo.bytes], { type: photo.type }));
        addresses = [small, whole];
        setShown({ small, whole });
      })
      .catch(() => setShown('elsewhere'));
    return () => {
      wanted = false;
      addresses.forEach((address) => URL.revokeObjectURL(address));
    };
  }, [hash]);
  return shown;
}

function OnePhoto({
  hash,
  number,
  onRemove,
}: {
  hash: string;
  number: number;
  onRemove: (() => void) | undefined;
}) {
  const shown = usePhoto(hash);
  return (
    <li>
      {shown === 'elsewhere' ? (
        <span class="line">{words.elsewhere}</span>
      ) : (
        shown && (
          <a href={shown.whole} target="_blank" rel="noreferrer">
            <img src={shown.small} alt={words.photo(number)} />
          </a>
        )
      )}
      {onRemove && (
        <button type="button" class="button quiet" onClick={onRemove}>
          {words.remove(number)}
        </button>
      )}
    </li>
  );
}

export function PhotoStrip({
  hashes,
  onRemove,
}: {
  hashes: readonly string[];
  onRemove?: (hash: string) => void;
}) {
  if (hashes.length === 0) return null;
  return (
    <ul class="photo-strip">
      {hashes.map((hash, index) => (
        <OnePhoto
          key={hash}
          hash={hash}
          number={index + 1}
          onRemove={onRemove && (() => onRemove(hash))}
        />
      ))}
    </ul>
  );
}
