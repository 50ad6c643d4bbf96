import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { Session } from '../session.ts';

/** Redraws an element whenever its session changes, not at every frame. */
export class Hears implements ReactiveController {
  readonly #host: ReactiveControllerHost & { readonly session: Session };
  #heard: Session | null = null;

  constructor(host: ReactiveControllerHost & { readonly session: Session }) {
    this.#host = host;
  }

  readonly #changed = (): void => this.#host.requestUpdate();

  #hear(session: Session | null): void {
    if (session === this.#heard) return;
    this.#heard?.removeEventListener('change', this.#changed);
    this.#heard = session;
    session?.addEventListener('change', this.#changed);
  }

  hostConnected(): void {
    this.#host.requestUpdate();
  }

  hostUpdate(): void {
    this.#hear(this.#host.session);
  }

  hostDisconnected(): void {
    this.#hear(null);
  }
}
