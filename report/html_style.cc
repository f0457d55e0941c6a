#include "report/html_style.h"

#include <fmt/format.h>

#include "report/ink.h"

namespace proofstone {

namespace {

constexpr std::string_view rules = R"css(
* { box-sizing: border-box; }
html { background: var(--paper); color: var(--ink); -webkit-text-size-adjust: 100%; }
body { margin: 0 auto; padding: 1.25rem 1rem 4rem; max-width: 62rem;
  font: 1rem/1.5 system-ui, "Segoe UI", Roboto, "DejaVu Sans", sans-serif; overflow-wrap: anywhere; }
h1, h2, h3, h4 { line-height: 1.25; margin: 0; font-weight: 650; }
h1 { font-size: 1.75rem; margin: 0.15rem 0 1rem; }
h2 { font-size: 1.3rem; margin: 2.75rem 0 0.9rem; padding-top: 0.9rem;
  border-top: 2px solid var(--stone-3); }
h3 { font-size: 1.08rem; }
h4 { font-size: 0.95rem; margin: 1.1rem 0 0.35rem; color: var(--muted); }
p { margin: 0.4rem 0; max-width: 46rem; }
a { color: var(--river); }
a:focus-visible, summary:focus-visible { outline: 3px solid var(--river); outline-offset: 2px; }
.quiet { color: var(--muted); }
.kind { color: var(--muted); font-size: 0.95rem; margin: 0; }
.outcome { display: inline-flex; align-items: center; gap: 0.4rem; font-weight: 650; }
.outcome svg { flex: none; }
.meets { color: var(--river); }
.falls-short { color: var(--ochre); }
.not-yet-known { color: var(--muted); }
.ask-the-designer { color: var(--ink); }
.headline { border-left: 0.4rem solid var(--stone-3); padding: 0.35rem 0 0.35rem 1rem; }
.headline .outcome { font-size: 1.35rem; }
.headline .sentence { font-size: 1.1rem; }
dl.facts { display: grid; grid-template-columns: max-content 1fr; gap: 0.15rem 1rem; margin: 1rem 0; }
dl.facts dt { color: var(--muted); }
dl.facts dd { margin: 0; }
table { border-collapse: collapse; width: 100%; font-size: 0.94rem; }
th, td { text-align: left; vertical-align: top; padding: 0.4rem 0.8rem 0.4rem 0;
  border-bottom: 1px solid var(--line); }
th { color: var(--muted); font-weight: 600; }
td.value { font-variant-numeric: tabular-nums; font-weight: 600; }
.overview td + td { white-space: nowrap; }
.steps { table-layout: fixed; }
.record table { overflow-wrap: break-word; }
.record td:first-child, .record td:last-child { white-space: nowrap; }
.placing { table-layout: fixed; margin-bottom: 2rem; }
.placing td { overflow-wrap: anywhere; }
.placing th:nth-child(1) { width: 16%; }
.placing th:nth-child(2) { width: 38%; }
.placing th:nth-child(3) { width: 14%; }
.placing .meaning { display: block; }
.placing ul { margin: 0; padding-left: 1rem; }
.steps th:nth-child(1) { width: 33%; }
.steps th:nth-child(2) { width: 30%; }
.steps th:nth-child(3) { width: 14%; }
ul.values { list-style: none; padding: 0; max-width: none; display: flex; flex-wrap: wrap;
  gap: 0.25rem 1.75rem; }
ul.values li { margin: 0; }
.symbol { font-weight: 650; }
.meaning, .source { color: var(--muted); font-size: 0.9rem; }
figure { margin: 0 0 2.5rem; }
figcaption { font-weight: 650; margin-bottom: 0.6rem; }
figure .words { color: var(--muted); font-size: 0.94rem; }
figure svg { display: block; max-width: 100%; height: auto; }
.narrow { display: none; }
article { padding: 1rem 0 1.1rem; border-top: 1px solid var(--line); }
article:first-of-type { border-top: 0; padding-top: 0; }
.verdict { display: flex; flex-wrap: wrap; align-items: center; gap: 0 0.75rem; margin: 0.25rem 0; }
.governs { color: var(--muted); border: 1px solid var(--stone-3); border-radius: 0.25rem;
  padding: 0 0.4rem; font-size: 0.9rem; }
.overview .meaning { display: block; }
.measures { display: flex; flex-wrap: wrap; gap: 0.15rem 1.75rem; margin: 0.4rem 0; }
.measures b { font-variant-numeric: tabular-nums; }
.next { border-left: 3px solid var(--stone-3); padding-left: 0.75rem; }
details { margin-top: 0.5rem; }
summary { cursor: pointer; color: var(--river); padding: 0.45rem 0; min-height: 2.75rem;
  display: flex; align-items: center; }
summary::before { content: "+"; width: 1.3rem; font-weight: 650; }
details[open] > summary::before { content: "−"; }
ul { margin: 0.3rem 0; padding-left: 1.2rem; max-width: 46rem; }
li { margin: 0.2rem 0; }
li.not-kept { color: var(--ochre); }
.cautions { border: 1.5px solid var(--ochre); padding: 0.2rem 1rem; }
.signatures { display: grid; grid-template-columns: repeat(2, 1fr); gap: 2.6rem 2rem; margin-top: 3rem; }
.signatures div { border-top: 1px solid var(--ink); padding-top: 0.3rem; font-size: 0.9rem; }

@media (max-width: 46rem) {
  .wide { display: none; }
  .narrow { display: block; }
  table, tbody, tr, td { display: block; }
  thead { position: absolute; clip-path: inset(50%); width: 1px; height: 1px; overflow: hidden; }
  tr { padding: 0.5rem 0; border-bottom: 1px solid var(--line); }
  td { border: 0; padding: 0.1rem 0; }
  td:empty { display: none; }
  td[data-name]::before { content: attr(data-name) " "; color: var(--muted); font-weight: 400; }
  td.formula, td.value { display: inline; }
  td.formula:not(:empty) + td.value::before { content: " = "; font-weight: 400; }
  .overview td + td { display: inline-flex; gap: 0.35rem; margin-right: 1rem; }
  .overview td:empty { display: none; }
  .signatures { grid-template-columns: 1fr; }
}

@page { margin: 16mm 15mm 18mm; }
@media print {
  html { font-size: 9pt; }
  body { max-width: none; padding: 0; line-height: 1.4; }
  h2 { break-after: avoid; }
  th, td { padding: 0.5mm 3mm 0.5mm 0; }
  h3, h4, figcaption, summary { break-after: avoid; }
  figure, tr, .headline, .signatures, .cautions { break-inside: avoid; }
  figure svg { max-height: 225mm; }
  thead { display: table-header-group; }
  details::details-content { content-visibility: visible; display: block; height: auto; opacity: 1; }
  summary { color: var(--muted); min-height: 0; font-weight: 650; }
  summary::before { content: ""; width: 0; }
  a { color: inherit; text-decoration: none; }
}
)css";

}  // namespace

std::string html_style() {
  std::string style = fmt::format(":root {{ color-scheme: light; {} }}\n", light_inks());
  // Print stays light: paper is white.
  style += fmt::format(
      "@media screen and (prefers-color-scheme: dark) {{ :root {{ color-scheme: dark; {} }} }}\n"
      "@media print {{ :root {{ --paper: #ffffff; --ink: #000000; --muted: #3c4144; }} }}\n",
      dark_inks());
  return style + std::string(rules);
}

}  // namespace proofstone
