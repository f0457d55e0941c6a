/** The site that is open and what the engine says about it, kept up to date with the settings. */
import { batch, computed, effect, signal } from '@preact/signals';
import { engineFor, failureFrom, isLong } from './engine';
import { EngineFailure } from './engine_client';
import type { AssessAnswer, Findings, PageAnswer, Picture, Problem } from './findings';
import { readPhoto } from './record/photo';
import { keepPhoto } from './record/drafts';
import { forgetOpenSite, keepSite, lastOpenSite, readKeptSite } from './record/kept_sites';
import { openedSite } from './record/site_record';
import { units } from './settings';
import { photoHashIn } from './site_archive';
import { strings } from './strings';
import {
  type ExampleEntry,
  listExamples,
  type PickedFile,
  readExample,
  type SiteFiles,
  type SiteReading,
} from './site_files';

/** What the screen shows. */
export type View =
  | { state: 'opening' }
  | { state: 'findings'; site: SiteFiles; findings: Findings; pictures: Picture[] }
  | { state: 'problems'; label: string; problems: Problem[] }
  | { state: 'failed'; failure: EngineFailure };

export const view = signal<View>({ state: 'opening' });
/** Whether the engine is at work on what will replace the present view. */
export const working = signal(false);
export const examples = signal<ExampleEntry[]>([]);
/** Width in pixels that pictures are drawn for; 0 until the page is laid out. */
export const pictureWidth = signal(0);

const attempt = signal(0);

/** The question the present site, units and width make. */
const question = computed(() => {
  const open = openedSite.value;
  if (!open || pictureWidth.value === 0) return undefined;
  return {
    open,
    attempt: attempt.value,
    request: {
      ask: 'assess',
      document: open.document,
      files: open.files,
      units: units.value,
      pictures: { width: pictureWidth.value },
    },
  };
});

/** A judging that takes its time: how much of its answer has come, or that the user ended it. */
export const judging = signal<{ share: number } | 'ended' | undefined>(undefined);
let end: () => void = () => undefined;

/** The user does not want to wait: what was found before stands. */
export function endJudging(): void {
  end();
  batch(() => {
    working.value = false;
    judging.value = 'ended';
  });
}

/** What the engine says to a question; undefined where another one was asked meanwhile. */
async function askedAnswer(
  asked: NonNullable<typeof question.value>,
): Promise<AssessAnswer | undefined> {
  const ending = new AbortController();
  const { signal: ended } = ending;
  end();
  end = isLong(asked.request) ? () => ending.abort() : () => undefined;
  const hear = (share: number) => (judging.value = { share });
  judging.value = undefined;
  if (isLong(asked.request)) hear(0);
  try {
    return await engineFor(asked.request).ask<AssessAnswer>(asked.request, { signal: ended, hear });
  } catch (error) {
    if (ended.aborted) return undefined;
    throw error;
  }
}

async function assess(asked: NonNullable<typeof question.value>): Promise<void> {
  working.value = true;
  let next: View;
  try {
    const answer = await askedAnswer(asked);
    if (!answer) return;
    const { findings, pictures = [], problems = [] } = answer;
    next = findings
      ? { state: 'findings', site: asked.open, findings, pictures }
      : { state: 'problems', label: asked.open.label, problems };
  } catch (error) {
    next = { state: 'failed', failure: failureFrom(error) };
  }
  // The user may have asked for something else meanwhile; its answer is on the way.
  if (asked !== question.peek()) return;
  batch(() => {
    view.value = next;
    working.value = false;
    judging.value = undefined;
  });
  if (next.state === 'findings') void keepIfPicked(next.site, next.findings.site.name);
}

/** A site picked from files is kept on this device once the engine has read it. */
async function keepIfPicked(site: SiteFiles, name: string): Promise<void> {
  if (site.origin !== 'device' || site.kept !== undefined) return;
  try {
    const kept = await keepSite(site, name);
    if (openedSite.peek() === site) openedSite.value = kept;
  } catch {
    // `recordTrouble` says why; the findings hold all the same.
  }
}

/** The user has asked for what is shown; false while it is what the page came up with itself. */
export const askedByUser = signal(false);

/** Readings started so far; the answer to an older one than the last is no longer wanted. */
let readings = 0;

/** Shows a site once it is read, or what is wrong with its files. */
async function show(reading: Promise<SiteReading>): Promise<void> {
  readings += 1;
  const own = readings;
  const result = await reading;
  if (own !== readings) return;
  // The findings do not wait for pictures; `recordTrouble` says where one could not be kept.
  if ('site' in result) void keepPickedPhotos(result.photos ?? []).catch(() => undefined);
  batch(() => {
    if ('site' in result) {
      view.value = { state: 'opening' };
      openedSite.value = result.site;
    } else {
      openedSite.value = undefined;
      working.value = false;
      view.value = { state: 'problems', label: result.label, problems: result.problems };
    }
  });
}

/** Keeps photos that came with a site, if each is what its name says. */
async function keepPickedPhotos(picked: readonly PickedFile[]): Promise<void> {
  for (const { path, file } of picked) {
    const photo = await readPhoto(file, { keepsLocation: true });
    if (typeof photo !== 'string' && photo.hash === photoHashIn(path)) await keepPhoto(photo);
  }
}

/** Opens what the user picked. */
export function openSite(reading: Promise<SiteReading>): void {
  askedByUser.value = true;
  void show(reading);
}

export function openExample(example: ExampleEntry): void {
  forgetOpenSite();
  openSite(readExample(example));
}

/** Opens a site that is kept on this device. */
export function openKept(id: string): void {
  openSite(
    readKeptSite(id).then((site) =>
      site ? { site } : { label: id, problems: [strings.problems.notKept()] },
    ),
  );
}

/** Asks again after a failure. */
export function tryAgain(): void {
  askedByUser.value = true;
  if (judging.peek() !== 'ended') view.value = { state: 'opening' };
  if (openedSite.value) attempt.value += 1;
  else void openFirstExample();
}

/** The site that was open last, if this device still has it. */
async function lastKeptSite(): Promise<SiteFiles | undefined> {
  const id = lastOpenSite();
  if (id === undefined) return undefined;
  try {
    return await readKeptSite(id);
  } catch {
    return undefined;
  }
}

async function openFirstExample(): Promise<void> {
  try {
    examples.value = await listExamples();
    const [first] = examples.value;
    const last = await lastKeptSite();
    if (readings > 0) return;
    if (last) await show(Promise.resolve({ site: last }));
    else if (first) await show(readExample(first));
  } catch (error) {
    view.value = { state: 'failed', failure: new EngineFailure('not loaded', String(error)) };
  }
}

/** What the engine says of the open site when asked for something else; shows why it cannot. */
export async function askOpenSite<Answer extends { problems?: Problem[] }>(
  ask: string,
): Promise<Answer | undefined> {
  const asked = question.peek();
  if (!asked) return undefined;
  const { document, files, units } = asked.request;
  try {
    const request = { ask, document, files, units };
    const answer = await engineFor(request).ask<Answer>(request);
    if (!answer.problems) return answer;
    view.value = { state: 'problems', label: asked.open.label, problems: answer.problems };
  } catch (error) {
    view.value = { state: 'failed', failure: failureFrom(error) };
  }
  return undefined;
}

/** What a paper is about, as the engine's request `report` takes it. */
export interface PaperAsked {
  kind: 'design-book' | 'lot-acceptance' | 'placing-record' | 'daily-report';
  lot?: string;
  day?: string;
  clock?: string;
}

/** A paper about the open site, or why there is none. */
export async function writePaper(
  paper: PaperAsked,
): Promise<{ html?: string; problems?: Problem[] }> {
  const asked = question.peek();
  if (!asked) return {};
  const { document, files, units } = asked.request;
  const request = { ask: 'report', paper, document, files, units };
  return engineFor(request).ask(request);
}

/** A printable page of the open site as the engine writes it. */
export async function writePage(ask: 'report' | 'specification'): Promise<string | undefined> {
  return (await askOpenSite<PageAnswer>(ask))?.html;
}

/** Opens the last site or the first example, and answers every change of site, units and width from now on. */
export function startAssessing(): void {
  effect(() => {
    if (question.value) void assess(question.value);
  });
  void openFirstExample();
}
