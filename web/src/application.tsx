/** The page: header, what the view asks for, footer. */
import { useLayoutEffect } from 'preact/hooks';
import { Conflicts } from './conflicts';
import { Desk } from './desk';
import { FailureNotice } from './failure_notice';
import { CountScreen } from './field/count_screen';
import { FieldHome } from './field/field_home';
import { LoadForm, QuickLookForm } from './field/lot_tasks';
import { LotPage } from './field/lot_page';
import { NewRockForm } from './field/new_rock_form';
import { ProblemForm, ProblemPage } from './field/problem_forms';
import { UndoNotice } from './field/undo_notice';
import { WeighForm } from './field/weigh_form';
import { ZonePage } from './field/zone_page';
import { FindingsList } from './findings_list';
import { Headline } from './headline';
import { usePlaceFocus } from './heading_focus';
import { Help } from './help';
import { JudgingNotice } from './judging_notice';
import { DropPlace } from './open_site';
import { NewVersionNotice, PageFooter } from './page_footer';
import { PageHeader } from './page_header';
import { PicturesPanel, takePageWidth } from './pictures_panel';
import { PhotoTask } from './photo_task';
import { addressOf, isInField, isTask, type LotTask, type Place, place } from './places';
import { ProblemList } from './problem_list';
import { QuantitiesPanel } from './quantities_panel';
import { SaveFindings } from './save_findings';
import { view, working } from './site_assessment';
import { strings } from './strings';

/** Pictures and findings; the empty panel of an opening site already measures the width. */
function AssessedSite() {
  const shown = view.value;
  const answered = shown.state === 'findings' ? shown : undefined;
  return (
    <>
      {answered ? (
        <Headline findings={answered.findings} site={answered.site} />
      ) : (
        <p class="opening" role="status">
          {strings.headline.opening}
        </p>
      )}
      <div class="beside">
        <PicturesPanel pictures={answered?.pictures ?? []} />
        {answered && (
          <div class="list-column">
            <FindingsList findings={answered.findings.findings} />
            <QuantitiesPanel findings={answered.findings} />
            <SaveFindings findings={answered.findings} />
          </div>
        )}
      </div>
    </>
  );
}

/** A lot, or what is taken down of it. */
function LotScreen({ lot, task }: { lot: string; task?: LotTask }) {
  switch (task) {
    case 'count':
      return <CountScreen key={lot} lot={lot} />;
    case 'photo':
      return <PhotoTask key={lot} lot={lot} />;
    case 'quick-look':
      return <QuickLookForm lot={lot} />;
    case 'weigh':
      return <WeighForm key={lot} lot={lot} />;
    case 'load':
      return <LoadForm lot={lot} />;
    case 'problem':
      return <ProblemForm about={{ lot }} back={{ at: 'lot', lot }} />;
    default:
      return <LotPage lot={lot} />;
  }
}

/** The screen of the field that the address names. */
function FieldScreen() {
  const here = place.value;
  useLayoutEffect(takePageWidth, []);
  switch (here.at) {
    case 'new-rock':
      return <NewRockForm />;
    case 'lot':
      return <LotScreen {...here} />;
    case 'zone':
      return (
        <ZonePage
          key={here.zone}
          zone={here.zone}
          {...(here.check === undefined ? {} : { check: here.check })}
        />
      );
    case 'zone-problem': {
      const { zone, check } = here;
      const about = check === undefined ? { zone } : { zone, check };
      return <ProblemForm about={about} back={{ at: 'zone', zone }} />;
    }
    case 'problem':
      return <ProblemPage key={here.problem} problem={here.problem} />;
    default:
      return <FieldHome />;
  }
}

/** The screen that the address names, of a site that was opened. */
function SiteScreen({ here }: { here: Place }) {
  if (here.at === 'desk') return <Desk place={here} />;
  return isInField(here) ? <FieldScreen /> : <AssessedSite />;
}

/** The open site as the address asks for it, or why there is none. */
function SitePart({ here }: { here: Place }) {
  const shown = view.value;
  switch (shown.state) {
    case 'problems':
      return <ProblemList label={shown.label} problems={shown.problems} />;
    case 'failed':
      return <FailureNotice failure={shown.failure} />;
    default:
      return (
        <>
          {!isTask(here) && <JudgingNotice />}
          {shown.state === 'findings' && !isTask(here) && <Conflicts />}
          <SiteScreen here={here} />
        </>
      );
  }
}

export function Application() {
  const shown = view.value;
  const here = place.value;
  usePlaceFocus(addressOf(here));
  return (
    <>
      <PageHeader />
      <main id="content" tabIndex={-1} aria-busy={working.value}>
        {here.at === 'help' ? <Help page={here.page} /> : <SitePart here={here} />}
      </main>
      <PageFooter findings={shown.state === 'findings' ? shown.findings : undefined} />
      {isInField(here) && !isTask(here) && <UndoNotice />}
      <NewVersionNotice />
      <DropPlace />
    </>
  );
}
