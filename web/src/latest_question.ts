/** Asks the engine one question at a time; of those that come meanwhile only the last is asked. */
import { engineFor, isLong, type SiteRequest } from './engine';

export class LatestQuestion<Question, Answer> {
  private next: { question: Question } | undefined;
  private asking = false;
  /** Ends what is being asked, where that takes its time. */
  private end: (() => void) | undefined;

  /** `requestOf` words a question when its turn has come; `hear` gets the answers still wanted. */
  constructor(
    private readonly requestOf: (question: Question) => SiteRequest,
    private hear: (answer: Answer, question: Question) => void,
  ) {}

  ask(question: Question): void {
    this.next = { question };
    this.end?.();
    if (!this.asking) void this.run();
  }

  /** No answer is wanted any more. */
  stop(): void {
    this.next = undefined;
    this.hear = () => undefined;
    this.end?.();
  }

  private async run(): Promise<void> {
    this.asking = true;
    while (this.next) {
      const { question } = this.next;
      this.next = undefined;
      try {
        const answer = await this.answerTo(this.requestOf(question));
        if (!this.next) this.hear(answer, question);
      } catch {
        // What was asked about stands all the same; the next question is asked of a fresh engine.
      }
    }
    this.asking = false;
  }

  private answerTo(request: SiteRequest): Promise<Answer> {
    const ending = new AbortController();
    this.end = isLong(request) ? () => ending.abort() : undefined;
    return engineFor(request).ask<Answer>(request, { signal: ending.signal });
  }
}
