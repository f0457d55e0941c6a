/** The handbook on this device: its pages, and finding one by words. */
import type { Language } from '../language';

export interface HelpPage {
  id: string;
  title: string;
  group: string;
  /** With `<!--picture NAME-->` where a picture stands. */
  html: string;
  /** In which language it is; said once it is read. */
  language?: Language;
}

const readings = new Map<string, Promise<unknown>>();

/** Fetches a file of the help once; one that could not be had is asked for again next time. */
function read<Content>(name: string): Promise<Content> {
  const known = readings.get(name);
  if (known) return known as Promise<Content>;
  const reading = fetch(`help/${name}`).then(async (response) => {
    if (!response.ok) throw new Error(`${response.status} ${response.url}`);
    return (await response.json()) as Content;
  });
  readings.set(name, reading);
  reading.catch(() => readings.delete(name));
  return reading;
}

/** The pages, each as another language has it where it does. */
export function withTranslated(
  pages: readonly HelpPage[],
  translated: readonly HelpPage[],
  language: Language,
): HelpPage[] {
  return pages.map((page) => {
    const own = translated.find(({ id }) => id === page.id);
    return own ? { ...own, language } : page;
  });
}

/** All pages in the order of the index; in English what the language of the screens lacks. */
export async function handbookPages(language: Language): Promise<HelpPage[]> {
  const pages = (await read<HelpPage[]>('handbook.json')).map((page): HelpPage => ({
    ...page,
    language: 'en',
  }));
  if (language === 'en') return pages;
  return withTranslated(pages, await read<HelpPage[]>(`${language}.json`), language);
}

/** What a page shows, with its pictures; without them where they cannot be had. */
export async function shownOf({ html }: HelpPage): Promise<string> {
  if (!html.includes('<!--picture')) return html;
  const pictures = await read<Record<string, string>>('pictures.json').catch(
    (): Record<string, string> => ({}),
  );
  return html.replaceAll(/<!--picture ([\w-]+)-->/g, (_, name: string) => pictures[name] ?? '');
}

/** Small letters without accents. */
function plain(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase();
}

/** The words of a page. */
export function textOf({ html }: HelpPage): string {
  return html
    .replaceAll(/<[^>]*>/g, ' ')
    .replaceAll('&amp;', '&')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll(/\s+/g, ' ')
    .trim();
}

export interface Found {
  page: HelpPage;
  /** The words of the page about the first word that was looked for. */
  about: string;
}

const mostFound = 30;
const wordsAbout = 60;

/** A piece of a text round what was found, cut at spaces. */
function pieceRound(text: string, at: number): string {
  const from = at <= wordsAbout ? 0 : text.indexOf(' ', at - wordsAbout) + 1;
  const end = text.indexOf(' ', at + wordsAbout);
  return `${from > 0 ? '… ' : ''}${text.slice(from, end < 0 ? undefined : end)}${end < 0 ? '' : ' …'}`;
}

/** Pages that hold every word of `sought`, those first whose titles do. */
export function pagesWith(pages: readonly HelpPage[], sought: string): Found[] {
  const words = plain(sought)
    .split(/\s+/)
    .filter((word) => word !== '');
  if (words.length === 0) return [];
  const ranked = pages.flatMap((page) => {
    const title = plain(page.title);
    const text = textOf(page);
    const all = `${title} ${plain(page.group)} ${plain(text)}`;
    if (!words.every((word) => all.includes(word))) return [];
    const inTitle = words.filter((word) => title.includes(word)).length;
    const at = Math.max(0, plain(text).indexOf(words[0] ?? ''));
    return [{ page, about: pieceRound(text, at), inTitle }];
  });
  return ranked
    .sort((one, other) => other.inTitle - one.inTitle)
    .slice(0, mostFound)
    .map(({ page, about }) => ({ page, about }));
}
