/** A picture of the engine, cleaned and placed in the page, with its description in words. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Picture } from './findings';
import { safeSvg } from './safe_svg';
import { strings } from './strings';

export function PictureFigure({ picture }: { picture: Picture }) {
  const place = useRef<HTMLDivElement>(null);
  const [drawable, setDrawable] = useState(true);

  useLayoutEffect(() => {
    const svg = safeSvg(picture.svg);
    setDrawable(svg !== undefined);
    if (!svg) return;
    // The caption and the description carry the words; inside, they would repeat as a tooltip.
    for (const child of [...svg.children]) {
      if (child.localName === 'title' || child.localName === 'desc') child.remove();
    }
    svg.setAttribute('role', 'img');
    svg.removeAttribute('aria-labelledby');
    svg.setAttribute('aria-label', `${picture.title}. ${picture.description}`);
    place.current?.replaceChildren(svg);
  }, [picture]);

  return (
    <figure class="picture" data-kind={picture.kind}>
      <figcaption {...strings.asWritten}>{picture.title}</figcaption>
      <div class="drawing" ref={place} hidden={!drawable} {...strings.asWritten} />
      {!drawable && <p class="not-drawable">{strings.pictures.notDrawable}</p>}
      {picture.description && (
        <details class="in-words">
          <summary>{strings.pictures.inWords}</summary>
          <p {...strings.asWritten}>{picture.description}</p>
        </details>
      )}
    </figure>
  );
}
