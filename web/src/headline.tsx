/** What the whole site comes to, in one phrase and one sentence. */
import { EngineText, WrittenInEnglish } from './engine_text';
import type { Findings } from './findings';
import { useHeadingFocus } from './heading_focus';
import { OpenSite } from './open_site';
import { OutcomeMark } from './outcome_mark';
import { askedByUser } from './site_assessment';
import { recordTrouble } from './record/record_access';
import type { SiteFiles } from './site_files';
import { strings } from './strings';

function originOf({ origin, kept }: SiteFiles): string {
  const words = strings.headline;
  if (origin === 'device') {
    if (kept !== undefined) return words.device;
    const trouble = recordTrouble.value;
    return trouble
      ? `${words.deviceNotKept} ${strings.record.troubles[trouble]}`
      : words.deviceNotKept;
  }
  return kept === undefined ? words.example : words.changedExample;
}

export function Headline({ findings, site }: { findings: Findings; site: SiteFiles }) {
  const { outcome, sentence } = findings.headline;
  const heading = useHeadingFocus(askedByUser.value);
  return (
    <section class="headline" data-outcome={outcome} aria-labelledby="site-name">
      <div class="name">
        <h1 id="site-name" ref={heading} tabIndex={-1}>
          {findings.site.name}
        </h1>
        <p class="origin">
          {originOf(site)}
          {findings.site.revision && ` · ${strings.headline.revision(findings.site.revision)}`}
        </p>
      </div>
      <div class="verdict">
        <OutcomeMark outcome={outcome} size={56} />
        <p class="phrase" id="verdict">
          {strings.outcomes[outcome]}
        </p>
        <p class="sentence">
          <EngineText text={sentence} of="headline" />
        </p>
      </div>
      <WrittenInEnglish />
      <OpenSite />
    </section>
  );
}
