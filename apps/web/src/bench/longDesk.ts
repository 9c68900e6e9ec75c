import type { LongAnswer, LongQuestion } from "../worker/askLong.ts";
import type { RemoteAnswers } from "../worker/startAnswers.ts";

export interface Slip<A extends LongAnswer = LongAnswer> {
  readonly answer: A | null;
  /** of an older state of the job */
  readonly stale: boolean;
  /** 0 to 1 while it is being worked out; null while it is not */
  readonly progress: number | null;
  readonly fault: string | null;
}

const blank: Slip = { answer: null, stale: false, progress: null, fault: null };

/**
 * Long questions, one after another on a worker of their own, so that a change of the job is never kept waiting. What is
 * asked of an older job is stopped; its answer stays, marked stale, until the new one comes.
 */
export class LongDesk {
  readonly #slips = new Map<string, Slip>();
  #queue: LongQuestion[] = [];
  #running: string | null = null;
  #job: unknown = null;
  #turn = 0;

  constructor(
    private readonly worker: RemoteAnswers,
    private readonly changed: () => void,
  ) {}

  slip<K extends LongAnswer["kind"]>(question: LongQuestion & { kind: K }): Slip<Extract<LongAnswer, { kind: K }>> {
    return (this.#slips.get(keyOf(question)) ?? blank) as Slip<Extract<LongAnswer, { kind: K }>>;
  }

  /** The job has changed: everything known is of the one before. */
  outdate(): void {
    this.#turn++;
    this.#queue = [];
    this.#running = null;
    void this.worker.stop();
    for (const [key, slip] of this.#slips)
      this.#slips.set(key, { ...slip, stale: slip.answer !== null, progress: null, fault: null });
  }

  /** Asks the questions of this job, in order, unless they are answered or waiting already. */
  ask(job: unknown, questions: readonly LongQuestion[]): void {
    this.#job = job;
    for (const question of questions) {
      const key = keyOf(question);
      const slip = this.#slips.get(key) ?? blank;
      const waiting = this.#running === key || this.#queue.some((each) => keyOf(each) === key);
      if (waiting || (slip.answer !== null && !slip.stale) || slip.fault !== null) continue;
      this.#queue.push(question);
      this.#put(key, { ...slip, progress: 0 });
    }
    void this.#next();
  }

  /** One more of the job in hand. */
  askAlso(question: LongQuestion): void {
    if (this.#job !== null) this.ask(this.#job, [question]);
  }

  /** Takes one question back. */
  cancel(question: LongQuestion): void {
    const key = keyOf(question);
    this.#queue = this.#queue.filter((each) => keyOf(each) !== key);
    this.#put(key, { ...(this.#slips.get(key) ?? blank), progress: null });
    if (this.#running === key) {
      this.#running = null;
      this.#turn++;
      void this.worker.stop();
      void this.#next();
    }
  }

  async #next(): Promise<void> {
    if (this.#running !== null) return;
    const question = this.#queue.shift();
    if (question === undefined) return;
    const key = (this.#running = keyOf(question));
    const turn = this.#turn;
    const tell = (progress: number) => {
      if (turn === this.#turn && this.#running === key)
        this.#put(key, { ...(this.#slips.get(key) ?? blank), progress });
    };
    const end = await this.worker.ask(this.#job, question, tell).then(
      (answer) => ({ answer, fault: null }),
      (error: unknown) => ({ answer: null, fault: error instanceof Error ? error.message : String(error) }),
    );
    if (turn !== this.#turn || this.#running !== key) return;
    this.#running = null;
    if (end.answer !== null || end.fault !== null) {
      const kept = end.answer ?? this.#slips.get(key)?.answer ?? null;
      this.#put(key, { answer: kept, stale: false, progress: null, fault: end.fault });
    }
    void this.#next();
  }

  #put(key: string, slip: Slip): void {
    this.#slips.set(key, slip);
    this.changed();
  }
}

const keyOf = (question: LongQuestion): string => JSON.stringify(question);
