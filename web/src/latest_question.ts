/** Asks the engine one question at a time; of those that come meanwhile only the last is asked. */
import { engine } from './engine';

export class LatestQuestion<Question, Answer> {
  private next: { question: Question } | undefined;
  private asking = false;

  /** `requestOf` words a question when its turn has come; `hear` gets the answers still wanted. */
  constructor(
    private readonly requestOf: (question: Question) => object,
    private hear: (answer: Answer, question: Question) => void,
  ) {}

  ask(question: Question): void {
    this.next = { question };
    if (!this.asking) void this.run();
  }

  /** No answer is wanted any more. */
  stop(): void {
    this.next = undefined;
    this.hear = () => undefined;
  }

  private async run(): Promise<void> {
    this.asking = true;
    while (this.next) {
      const { question } = this.next;
      this.next = undefined;
      try {
        const answer = await engine.ask<Answer>(this.requestOf(question));
        if (!this.next) this.hear(answer, question);
      } catch {
        // What was asked about stands all the same; the next question is asked of a fresh engine.
      }
    }
    this.asking = false;
  }
}
