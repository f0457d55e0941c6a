/** The pictures of the site, redrawn by the engine for the width there is. */
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { Picture } from './findings';
import { usePortion } from './more_button';
import { PictureFigure } from './picture';
import { pictureWidth } from './site_assessment';
import { strings } from './strings';

/** The engine is asked for a new drawing once the width has been still for so long. */
const stillMs = 120;

/** Pictures are drawn at least this wide, and shrunk where the page is narrower still. */
const narrowestPicture = 240;

/** Pictures of the field are this wide at most, and keep so far from the edges of a phone. */
const widestInField = 640;
const edgesInField = 34;

/** Sets `pictureWidth` where no panel of pictures measures it. */
export function takePageWidth(): void {
  if (pictureWidth.peek() > 0) return;
  const room = Math.min(document.documentElement.clientWidth - edgesInField, widestInField);
  pictureWidth.value = Math.max(room, narrowestPicture);
}

/** Keeps `pictureWidth` equal to the inner width of the element. */
function useMeasuredWidth() {
  const measured = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const element = measured.current;
    if (!element) return undefined;
    const measure = () => {
      pictureWidth.value = Math.max(Math.floor(element.clientWidth), narrowestPicture);
    };
    measure();
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const observer = new ResizeObserver(() => {
      clearTimeout(waiting);
      waiting = setTimeout(measure, stillMs);
    });
    observer.observe(element);
    return () => {
      clearTimeout(waiting);
      observer.disconnect();
    };
  }, []);
  return measured;
}

/** So many are drawn at a time. */
const portion = 40;
const step = 4;

export function PicturesPanel({ pictures }: { pictures: Picture[] }) {
  const measured = useMeasuredWidth();
  const { shown, growing, more } = usePortion(pictures, portion, { step });
  return (
    <section class="pictures" aria-labelledby="pictures-heading" aria-busy={growing}>
      <h2 id="pictures-heading" class="for-readers">
        {strings.pictures.heading}
      </h2>
      <div class="picture-width" ref={measured} aria-hidden="true" />
      {shown.map((picture) => (
        <PictureFigure key={picture.id} picture={picture} />
      ))}
      {more}
    </section>
  );
}
