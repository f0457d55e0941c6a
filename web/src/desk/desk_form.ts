/**
 * A form at the desk: what it holds, what would follow, what is wrong with it, and how it is kept.
 * It edits values at pointers of the site; what is kept is one revision of the fields that differ.
 */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { engine, failureFrom } from '../engine';
import type { NamedText, Problem } from '../findings';
import { type Change, pointerTo, stepsOf } from '../record/revision';
import { RecordFailure } from '../record/record_access';
import { change, openedSite } from '../record/site_record';
import { siteState } from '../site_state';
import { strings } from '../strings';
import { useChoices } from './choices';
import type { FormContext } from './form_context';
import { changesBetween, idFromName, sameValue, withoutEmpty } from './item_changes';
import { placedProblems, type Trial, trialRequest, useTrial } from './trial';
import { noteTyped, readTyped, type TypedDraft } from './typed_draft';

/** One value that a form edits. */
export interface FormPart {
  pointer: string;
  /** As the site has it; undefined for what is new. */
  kept: unknown;
  /** What a new one begins with. */
  beginning?: unknown;
}

export interface DeskForm {
  values: Record<string, unknown>;
  set: (pointer: string, value: unknown) => void;
  context: FormContext;
  trial: Trial | undefined;
  /** What the engine says is wrong; all of it once the user has tried to keep. */
  problems: readonly Problem[];
  tried: boolean;
  changed: boolean;
  /** Whether it is about something that the site does not have yet. */
  fresh: boolean;
  /** What was typed before and not kept stands again. */
  restored: boolean;
  keeping: boolean;
  trouble: string;
  /** Keeps what differs; resolves the ids that new items got, or undefined where it was not kept. */
  keep: (note: string) => Promise<Record<string, string> | undefined>;
  discard: () => void;
}

/** Ids that stand for items not kept yet: "new-zones". */
export function provisionalId(part: string): string {
  return `new-${part.replaceAll('_', '-')}`;
}

type Values = Record<string, unknown>;

function begun(parts: readonly FormPart[]): Values {
  return Object.fromEntries(
    parts.map(({ pointer, kept, beginning }) => [pointer, kept ?? beginning ?? {}]),
  );
}

function changesOf(parts: readonly FormPart[], from: Values, values: Values): Change[] {
  return parts.flatMap(({ pointer, kept }) => {
    // A new item that nobody has begun is left out.
    if (kept === undefined && sameValue(from[pointer], values[pointer])) return [];
    const before = kept === undefined ? undefined : from[pointer];
    return changesBetween(pointer, before, withoutEmpty(values[pointer]));
  });
}

/** The ids that provisional ones become, by the names that were typed. */
function idsFor(parts: readonly FormPart[], values: Values): Record<string, string> {
  const ids: Record<string, string> = {};
  for (const { pointer, kept } of parts) {
    const [part = '', id] = stepsOf(pointer);
    if (kept !== undefined || id === undefined || id !== provisionalId(part)) continue;
    const name = (values[pointer] as { name?: unknown } | undefined)?.name;
    const taken = Object.keys((siteState.peek() as Record<string, object>)[part] ?? {});
    const plain = part.replaceAll('_', '-').replace(/s$/, '');
    ids[id] = idFromName(typeof name === 'string' ? name : '', taken, plain);
  }
  return ids;
}

function withIds(value: unknown, ids: Record<string, string>): unknown {
  if (typeof value === 'string') return ids[value] ?? value;
  if (Array.isArray(value)) return value.map((inner) => withIds(inner, ids));
  if (value === null || typeof value !== 'object') return value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => [ids[key] ?? key, withIds(inner, ids)]),
  );
}

function renamed(one: Change, ids: Record<string, string>): Change {
  const moved = (pointer: string) =>
    pointerTo(...stepsOf(pointer).map((step) => ids[step] ?? step));
  return 'set' in one
    ? { set: moved(one.set), to: withIds(one.to, ids) }
    : { remove: moved(one.remove) };
}

/** A name that no other file of the site has, unless it holds the same. */
export function freeFileName(name: string, text: string, files: readonly NamedText[]): string {
  const plain = name.slice(Math.max(name.lastIndexOf('/'), name.lastIndexOf('\\')) + 1);
  const dot = plain.lastIndexOf('.');
  const [stem, ending] = dot > 0 ? [plain.slice(0, dot), plain.slice(dot)] : [plain, ''];
  for (let number = 1; ; number += 1) {
    const next = number === 1 ? plain : `${stem.replace(/-\d+$/, '')}-${number}${ending}`;
    const other = files.find((file) => file.name === next);
    if (!other || other.text === text) return next;
  }
}

export function useDeskForm(key: string, parts: readonly FormPart[]): DeskForm {
  const draftKey = `${openedSite.value?.kept ?? openedSite.value?.label ?? ''}.${key}`;
  const left = useMemo(() => readTyped(draftKey), [draftKey]);
  const [from, setFrom] = useState<Values>(() => left?.from ?? begun(parts));
  const [values, setValues] = useState<Values>(() => ({ ...begun(parts), ...left?.values }));
  const [files, setFiles] = useState<NamedText[]>(left?.files ?? []);
  const [touched, setTouched] = useState<ReadonlySet<string>>(new Set());
  const [tried, setTried] = useState(false);
  const [restored, setRestored] = useState(left !== undefined);
  const [keeping, setKeeping] = useState(false);
  const [trouble, setTrouble] = useState('');

  const changes = changesOf(parts, from, values);
  const edited = parts.some(({ pointer }) => !sameValue(from[pointer], values[pointer]));
  const isNew = parts.some(({ kept }) => kept === undefined);
  const trial = useTrial(edited || tried ? changes : [], files);
  const problems = placedProblems(trial?.answer.problems ?? [], trial?.changes ?? []);

  // Where nothing is being edited, the form follows the record: undoing, another tab, another person.
  const standing = JSON.stringify(parts.map(({ kept }) => kept));
  useEffect(() => {
    if (edited || isNew) return;
    setFrom(begun(parts));
    setValues(begun(parts));
  }, [standing]);

  useEffect(() => {
    if (!edited) noteTyped(draftKey, undefined);
  }, [draftKey, edited]);

  // Noted at once, not after the next paint: the page may be gone by then.
  const typed = useRef<TypedDraft>({ from, values, files });
  typed.current = { from, values, files };
  const type = (next: Partial<TypedDraft>) => {
    typed.current = { ...typed.current, ...next };
    noteTyped(draftKey, typed.current);
    setValues(typed.current.values);
    setFiles(typed.current.files);
  };

  const choicesFor = useChoices();
  const siteFiles = openedSite.value?.files ?? [];
  const allFiles = [...siteFiles, ...files];
  const context: FormContext = {
    problemsAt: (pointer) =>
      tried || touched.has(pointer)
        ? problems.filter(({ where, file }) => file === '' && where === pointer)
        : [],
    problemsIn: (file) => problems.filter((problem) => file !== '' && problem.file === file),
    touch: (pointer) => setTouched((now) => new Set([...now, pointer])),
    choicesFor,
    files: allFiles,
    addFile: (name, text) => {
      // What is not kept yet may change under its own name.
      const own = files.some((file) => file.name === name);
      const free = own ? name : freeFileName(name, text, allFiles);
      type({ files: [...files.filter((file) => file.name !== free), { name: free, text }] });
      return free;
    },
  };

  const keep = async (note: string): Promise<Record<string, string> | undefined> => {
    const site = openedSite.peek();
    if (!site || keeping) return undefined;
    setTried(true);
    setKeeping(true);
    setTrouble('');
    try {
      const named = JSON.stringify(changes);
      const coming = files.filter(
        ({ name }) =>
          named.includes(JSON.stringify(name)) && !siteFiles.some((file) => file.name === name),
      );
      const judged = await engine.ask<{ problems?: Problem[] }>(
        trialRequest('validate', { site, changes, files: coming }),
      );
      if (judged.problems?.length) return undefined;
      const ids = idsFor(parts, values);
      await change(
        changes.map((one) => renamed(one, ids)),
        note,
        { files: coming },
      );
      noteTyped(draftKey, undefined);
      const stands = Object.fromEntries(
        Object.entries(values).map(([pointer, value]) => [pointer, withoutEmpty(value)]),
      );
      setFrom(stands);
      setValues(stands);
      setFiles([]);
      setTried(false);
      setTouched(new Set());
      setRestored(false);
      return ids;
    } catch (error) {
      setTrouble(
        error instanceof RecordFailure
          ? strings.record.troubles[error.trouble]
          : strings.failures.sentences[failureFrom(error).kind],
      );
      return undefined;
    } finally {
      setKeeping(false);
    }
  };

  return {
    values,
    set: (pointer, value) => type({ values: { ...typed.current.values, [pointer]: value } }),
    context,
    trial,
    problems,
    tried,
    changed: edited,
    fresh: isNew,
    restored: restored && edited,
    keeping,
    trouble,
    keep,
    discard: () => {
      setFrom(begun(parts));
      setValues(begun(parts));
      setFiles([]);
      setTried(false);
      setTouched(new Set());
    },
  };
}
