/** The page round every screen: its head, its foot, what it says of itself. */
import type { FailureKind } from '../../engine_messages';
import type { Outcome, UnitSystem } from '../../findings';
import type { Language } from '../../language';
import type { Appearance } from '../../settings';
import type { EnginePiece, EngineTextKind } from '../sentences';

export const page = {
  product: 'Proofstone',

  skipToFindings: 'Skip to the findings',

  skipToContent: 'Skip to the page',

  places: {
    label: 'Parts of Proofstone',
    findings: 'Findings',
    field: 'Field',
    desk: 'Desk',
  },

  code: 'en' as Language,
  language: 'Language',
  /** What the engine wrote stands in its language: attributes of the elements that show it. */
  asWritten: {} as { lang?: string },
  /** Said where findings stand, by languages that the engine does not write. */
  writtenInEnglish: '',
  /** What a finding comes to. */
  outcomes: {
    meets: 'meets',
    'falls short': 'falls short',
    'not yet known': 'not yet known',
    'ask the designer': 'ask the designer',
  } satisfies Record<Outcome, string>,
  /** What is shown for a text of the engine, piece by piece; `of` names what it may be. */
  readEngine: (text: string, _of?: EngineTextKind): readonly EnginePiece[] => [
    { text, asWritten: false },
  ],

  units: {
    label: 'Units',
    names: { us: 'US', si: 'SI' } satisfies Record<UnitSystem, string>,
    meanings: {
      us: 'US customary units',
      si: 'SI units',
    } satisfies Record<UnitSystem, string>,
  },

  appearance: {
    names: {
      system: 'As device',
      light: 'Light',
      dark: 'Dark',
    } satisfies Record<Appearance, string>,
    button: (now: string, next: string) => `Appearance: ${now}. Change to: ${next}`,
  },

  headline: {
    opening: 'Opening the site and computing its findings …',
    working: 'Computing …',
    example: 'Invented example site',
    device: 'Read from files on this device and kept here. Nothing is sent anywhere.',
    deviceNotKept: 'Read from files on this device. Nothing is sent anywhere.',
    changedExample: 'Invented example site, with what you put into it. Kept on this device.',
    revision: (id: string) => `Revision ${id}`,
  },

  portions: {
    more: (number: number) => `Show ${number} more`,
    shown: (shown: number, all: number) => `${shown} of ${all} are shown.`,
  },

  judging: {
    running:
      'The engine judges the whole site, which takes a while. Go on; what stands here is from before.',
    coming: 'The findings are coming.',
    seconds: (seconds: number) => `${seconds} s so far`,
    end: 'Stop',
    ended: 'Stopped. What stands here is from before your last change.',
    again: 'Judge it now',
  },

  offline: {
    connectedStored:
      'The device is online. The application is stored and also works without a signal.',
    connectedStoring: 'The device is online. Storing the application for use without a signal …',
    connectedOnly:
      'The device is online. This browser does not store the application, so it needs a connection to open.',
    aloneStored: 'No signal. Everything here works without one.',
    aloneNotStored: 'No signal, and the application is not stored yet. Keep this page open.',
    install: 'Install on this device',
    newVersion: 'A new version of Proofstone is ready.',
    useNow: 'Load it now',
    later: 'Later',
  },

  room: {
    held: (used: string, all: string) => `This device holds ${used} for it, of about ${all}.`,
    short:
      'Room on this device is getting short. Save the site, and free some room before more is taken down.',
  },

  failures: {
    heading: 'The findings cannot be computed now',
    sentences: {
      unsupported:
        'This browser cannot run the engine. Use a current Chrome, Edge, Firefox or Safari, or update this one.',
      'not loaded':
        'The engine could not be loaded. Check the connection to where this page came from, then try again.',
      stopped:
        'The engine stopped twice while it worked on this site. Your files are unchanged. Try again; if it stops again, keep the files and report it, since no site should do this.',
      'too slow':
        'The engine gave no answer for a long time and was stopped. Close other programs on this device and try again.',
    } satisfies Record<FailureKind, string>,
    detail: 'What the browser reported',
    retry: 'Try again',
  },

  cautions: {
    heading: 'Cautions',
    engineer:
      'Findings support, and never replace, the judgement of the licensed engineer responsible and local criteria.',
    engine: (version: string) => `Engine ${version}`,
  },
};
