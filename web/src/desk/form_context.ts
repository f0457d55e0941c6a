/** What the inputs of one form share. */
import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { NamedText, Problem } from '../findings';

export interface Choice {
  value: string;
  label: string;
}

export interface FormContext {
  /** What the engine says is wrong right there, once the user has been there or tried to keep. */
  problemsAt: (pointer: string) => readonly Problem[];
  /** What it says of a file that the document names. */
  problemsIn: (file: string) => readonly Problem[];
  /** The user has answered there. */
  touch: (pointer: string) => void;
  /** What can be named there: items of a collection, classes, methods. */
  choicesFor: (collection: string) => readonly Choice[];
  files: readonly NamedText[];
  /** Adds a file that comes with the change; resolves the name it is kept under. */
  addFile: (name: string, text: string) => string;
}

export const Form = createContext<FormContext>({
  problemsAt: () => [],
  problemsIn: () => [],
  touch: () => undefined,
  choicesFor: () => [],
  files: [],
  addFile: (name) => name,
});

export function useForm(): FormContext {
  return useContext(Form);
}

/** Id of the element that takes what stands at a pointer. */
export function elementAt(pointer: string): string {
  return `at${pointer}`;
}
