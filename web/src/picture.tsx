/** A picture of the engine, cleaned and placed in the page, with its description in words. */
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { drawInTurn } from './drawing_queue';
import { EngineText, engineText } from './engine_text';
import type { Picture } from './findings';
import { keepWithin, sayWords } from './picture_words';
import { safeSvg } from './safe_svg';
import { strings } from './strings';

/** The drawing as an element of this page; its words stand outside. Nothing where it cannot be had. */
function drawingOf({ svg: text, title, description }: Picture): SVGSVGElement | undefined {
  const svg = safeSvg(text);
  if (!svg) return undefined;
  // The caption and the description carry the words; inside, they would repeat as a tooltip.
  for (const child of [...svg.children]) {
    if (child.localName === 'title' || child.localName === 'desc') child.remove();
  }
  svg.setAttribute('role', 'img');
  svg.removeAttribute('aria-labelledby');
  svg.setAttribute(
    'aria-label',
    `${engineText(title, 'pictureTitle')}. ${engineText(description)}`,
  );
  sayWords(svg);
  return svg;
}

/** Width and height as the picture says them, so that its place is kept until it is drawn. */
function shapeOf({ svg }: Picture): string {
  const [, width, height] = /viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg) ?? [];
  return width && height ? `${width} / ${height}` : '';
}

export function PictureFigure({ picture }: { picture: Picture }) {
  const place = useRef<HTMLDivElement>(null);
  const [drawable, setDrawable] = useState(true);
  const { svg, title, description } = picture;

  useLayoutEffect(() => {
    const { current } = place;
    if (current?.firstElementChild === null) current.style.aspectRatio = shapeOf(picture);
    return drawInTurn(() => {
      const drawing = drawingOf(picture);
      setDrawable(drawing !== undefined);
      if (!drawing) return;
      current?.replaceChildren(drawing);
      if (current) current.style.aspectRatio = '';
      keepWithin(drawing);
    });
  }, [svg, title, description]);

  return (
    <figure class="picture" data-kind={picture.kind}>
      <figcaption>
        <EngineText text={picture.title} of="pictureTitle" />
      </figcaption>
      <div class="drawing" ref={place} hidden={!drawable} />
      {!drawable && <p class="not-drawable">{strings.pictures.notDrawable}</p>}
      {picture.description && (
        <details class="in-words">
          <summary>{strings.pictures.inWords}</summary>
          <p>
            <EngineText text={picture.description} />
          </p>
        </details>
      )}
    </figure>
  );
}
