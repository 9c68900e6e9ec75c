/** What one tab tells the others. */
export interface News {
  readonly id: string;
  readonly revision: number;
}

/** The other tabs of this page; silent in a browser without a channel for it, where the revisions still hold. */
export class OtherTabs {
  readonly #channel = typeof BroadcastChannel === "undefined" ? null : new BroadcastChannel("stayput-jobs");

  constructor(hear: (news: News) => void) {
    if (this.#channel !== null) this.#channel.onmessage = ({ data }: MessageEvent<News>) => hear(data);
  }

  tell(news: News): void {
    this.#channel?.postMessage(news);
  }
}
