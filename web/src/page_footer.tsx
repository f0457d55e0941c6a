/** The cautions of the engine, and whether the application works without a connection. */
import { EngineText } from './engine_text';
import type { Findings } from './findings';
import {
  install,
  installPrompt,
  loadNewVersion,
  newVersionReady,
  readiness,
} from './offline_readiness';
import { deviceRoom } from './record/device_room';
import { RoomNotice } from './room_notice';
import { strings } from './strings';

function byteText(bytes: number): string {
  const [number, unit] = bytes < 1e9 ? [bytes / 1e6, 'megabyte'] : [bytes / 1e9, 'gigabyte'];
  const { lang } = document.documentElement;
  return number.toLocaleString(lang, { style: 'unit', unit, maximumFractionDigits: 1 });
}

/** How full the device is; a warning before it hurts. */
export function RoomLine() {
  const room = deviceRoom.value;
  if (!room) return null;
  const { held } = strings.room;
  return (
    <>
      <p class="room">{held(byteText(room.usedBytes), byteText(room.allBytes))}</p>
      <RoomNotice />
    </>
  );
}

export function ReadinessLine() {
  return (
    <div class="readiness">
      <p role="status">{readiness.value}</p>
      {installPrompt.value && (
        <button type="button" class="button quiet" onClick={() => void install()}>
          {strings.offline.install}
        </button>
      )}
    </div>
  );
}

export function NewVersionNotice() {
  if (!newVersionReady.value) return null;
  return (
    <div class="new-version" role="status">
      <p>{strings.offline.newVersion}</p>
      <button type="button" class="button" onClick={loadNewVersion}>
        {strings.offline.useNow}
      </button>
      <button type="button" class="button quiet" onClick={() => (newVersionReady.value = false)}>
        {strings.offline.later}
      </button>
    </div>
  );
}

export function PageFooter({ findings }: { findings?: Findings | undefined }) {
  const words = strings.cautions;
  return (
    <footer class="page-footer">
      {findings && findings.cautions.length > 0 && (
        <section aria-labelledby="cautions-heading">
          <h2 id="cautions-heading">{words.heading}</h2>
          <ul>
            {findings.cautions.map((caution) => (
              <li>
                <EngineText text={caution} />
              </li>
            ))}
          </ul>
        </section>
      )}
      {!findings && <p class="engineer">{words.engineer}</p>}
      <ReadinessLine />
      <RoomLine />
      {findings && <p class="engine">{words.engine(findings.engine)}</p>}
    </footer>
  );
}
