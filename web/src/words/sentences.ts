/** Pieces of which the words of every language are made. */
import type { Problem } from '../findings';

/** A piece of a text of the engine: in the language of the screens, or as the engine wrote it. */
export interface EnginePiece {
  text: string;
  asWritten: boolean;
}

/** Where a text of the engine stands, where that tells how it is to be read. */
export type EngineTextKind =
  'title' | 'headline' | 'meaning' | 'origin' | 'sourcePlace' | 'pictureTitle' | 'pictureWord';

export function counted(number: number, one: string, many: string): string {
  return `${number} ${number === 1 ? one : many}`;
}

/** A moment of the record as the language of the page writes it. */
export function momentText(moment: string): string {
  return new Date(moment).toLocaleString(document.documentElement.lang);
}

export function problem(code: string, file: string, what: string, allowed: string): Problem {
  return { code, what, file, where: '', allowed };
}
