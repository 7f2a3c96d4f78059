/** The language server that runs now: one at a time, started anew on demand. Knows nothing of how a client is made. */
import * as vscode from "vscode";
import { type BaseLanguageClient, State } from "vscode-languageclient";
import { LayoutsNotification, type LayoutsStanding, type Worked, WorkedNotification } from "./protocol";

export interface Running {
  /** Throws while there is none. */
  readonly client: () => BaseLanguageClient;
  /** Stops the server there is and starts another, with the settings of now. */
  readonly restart: () => Promise<void>;
  readonly stop: () => Promise<void>;
  /** A server is being started, the first one or a later one. */
  readonly onStarting: vscode.Event<void>;
  /** A server is ready, the first one or a later one. */
  readonly onReady: vscode.Event<void>;
  /** The server did not start, or ended by itself, and no other is started for it. */
  readonly onGone: vscode.Event<void>;
  readonly onWorked: vscode.Event<Worked>;
  readonly onLayouts: vscode.Event<LayoutsStanding>;
}

/** A client that has not been started, and what goes when its server is stopped. */
export interface Created {
  readonly client: BaseLanguageClient;
  readonly around: vscode.Disposable;
}

/** `create` is asked again for each restart; what it throws is told like a server that does not start. */
export function keepRunning(create: () => Created | Promise<Created>, log: vscode.LogOutputChannel): Running {
  const starting = new vscode.EventEmitter<void>();
  const ready = new vscode.EventEmitter<void>();
  const worked = new vscode.EventEmitter<Worked>();
  const layouts = new vscode.EventEmitter<LayoutsStanding>();
  const gone = new vscode.EventEmitter<void>();
  let created: Created | undefined;
  let last: Promise<void> = Promise.resolve();

  const inTurn = (work: () => Promise<void>): Promise<void> => {
    last = last.then(work);
    return last;
  };

  const stop = async (): Promise<void> => {
    const old = created;
    created = undefined;
    old?.around.dispose();
    await old?.client
      .dispose()
      .catch((reason: unknown) => log.warn(`The old server did not stop: ${reason}`));
  };

  const start = async (): Promise<void> => {
    starting.fire();
    try {
      const next = await create();
      created = next;
      next.client.onNotification(WorkedNotification, (what) => worked.fire(what));
      next.client.onNotification(LayoutsNotification, (what) => layouts.fire(what));
      next.client.onDidChangeState(({ newState }) => {
        if (newState === State.Running) ready.fire();
        if (newState === State.Stopped && created === next) gone.fire();
      });
      await next.client.start();
    } catch (reason) {
      gone.fire();
      sayNotStarted(log, reason);
    }
  };

  return {
    client: () => {
      if (created === undefined)
        throw new Error(vscode.l10n.t("The Sawbuck language server is not running."));
      return created.client;
    },
    restart: () => inTurn(() => stop().then(start)),
    stop: () => inTurn(stop),
    onStarting: starting.event,
    onReady: ready.event,
    onGone: gone.event,
    onWorked: worked.event,
    onLayouts: layouts.event,
  };
}

function sayNotStarted(log: vscode.LogOutputChannel, reason: unknown): void {
  log.error(`The language server did not start: ${reason}`);
  const again = vscode.l10n.t("Restart Language Server");
  const show = vscode.l10n.t("Show Log");
  void vscode.window
    .showErrorMessage(
      vscode.l10n.t("The Sawbuck language server did not start, so plans are not checked. The log says why."),
      again,
      show,
    )
    .then((chosen) => {
      if (chosen === again) void vscode.commands.executeCommand("sawbuck.restartServer");
      if (chosen === show) log.show();
    });
}
