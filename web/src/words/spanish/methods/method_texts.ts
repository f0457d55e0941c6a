/** What methods say of themselves in Spanish, by trade. */
export interface MethodTexts {
  /** What goes in, what may be chosen, what comes out; `said` are those of the engine in English. */
  labels: Record<string, string>;
  /** What to heed, sentence by sentence. */
  cautions: Record<string, string>;
}
