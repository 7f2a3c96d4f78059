/** Where better layouts are looked for: what is told and in which order, cancelling, workers that hang, break down or do not start. */
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import {
  EFFORT,
  type improve,
  improved,
  type LayoutJob,
  type LayoutNews,
} from "../../server/cutting/improve";
import { atWork, type FromWorker, type ToWorker } from "../../server/lsp/layouts/at-work";
import { NEWS_MS, type Told } from "../../server/lsp/layouts/driving";
import { inlineHost, type LayoutHost } from "../../server/lsp/layouts/host";
import { keptLayouts } from "../../server/lsp/layouts/kept";
import { threadOf } from "../../server/lsp/layouts/thread";
import { type Wiring, workerHost } from "../../server/lsp/layouts/worker-host";
import { boardPlan } from "../bench/layout/board-plans";
import { wait } from "./editor";

const boards = (seed: number): LayoutJob => ({ kind: "boards", job: boardPlan(seed) });
const SHEETS: LayoutJob = {
  kind: "sheets",
  job: {
    pieces: Array.from({ length: 7 }, (_, i) => ({
      id: `shelf / ${i + 1}`,
      length: 400_000 + 9_000 * i,
      width: 190_000,
      grain: "along",
    })),
    sold: [{ id: "sold 0", length: 1_560_576, width: 780_288, price: 3800, grain: true }],
    onHand: [],
    kerf: 2032,
  },
};

let hosts: LayoutHost[] = [];
const used = (host: LayoutHost): LayoutHost => {
  hosts.push(host);
  return host;
};
afterEach(() => {
  for (const host of hosts) host.end();
  hosts = [];
});

/** Runs a job to its end. */
const run = (host: LayoutHost, job: LayoutJob): Promise<readonly Told[]> =>
  new Promise((resolve) => {
    const all: Told[] = [];
    host.start(job, EFFORT, (told) => {
      all.push(told);
      if (told.what === "last" || told.what === "left") resolve(all);
    });
  });
const kinds = (all: readonly Told[]): string[] => all.map(({ what }) => what);

/** Nothing is looked for: what is asked is noted, and the test speaks for the worker. */
function fakes() {
  const workers: {
    readonly asked: ToWorker[];
    readonly says: (message: FromWorker) => void;
    readonly breaks: (why: string) => void;
    ended: boolean;
  }[] = [];
  const logged: string[] = [];
  const wiring: Wiring = (says, breaks) => {
    const worker = { asked: [] as ToWorker[], says, breaks, ended: false };
    workers.push(worker);
    return {
      post: (message) => worker.asked.push(message),
      end: () => {
        worker.ended = true;
      },
    };
  };
  const host = workerHost(wiring, {
    otherwise: inlineHost(),
    log: (what) => logged.push(what),
  });
  return { host: used(host), workers, logged };
}
const news = (cost: number): LayoutNews =>
  ({ kind: "boards", answer: {}, proof: { cost } }) as unknown as LayoutNews;
const job = boards(2);

describe("every host gives the same bytes", () => {
  const jobs = [boards(1), boards(2), boards(3), SHEETS];
  const expected = jobs.map((one) => JSON.stringify(improved(one)));
  const program = join(__dirname, "../../dist/layouts.js");
  test.each([
    ["between the keys", () => inlineHost()],
    [
      "in a thread of Node's, as it is shipped",
      () => workerHost(threadOf(program), { otherwise: inlineHost(), log: (what) => expect(what).toBe("") }),
    ],
  ])("%s", async (_, host) => {
    const one = used(host());
    for (const [i, asked] of jobs.entries()) {
      const last = (await run(one, asked)).at(-1)!;
      expect(JSON.stringify(last.what === "last" && last.news)).toBe(expected[i]);
    }
  });
});

describe("between the keys", () => {
  /** Better every step, for so many steps. */
  const stepping = (steps: number, ms: number): typeof improve =>
    function* () {
      for (let i = 0; i < steps; i++) {
        const end = performance.now() + ms;
        while (performance.now() < end);
        yield news(steps - i);
      }
      return news(0);
    };

  test("news is told about four times a second, the last at once", async () => {
    const from = performance.now();
    const all = await run(used(inlineHost(stepping(120, 5))), job);
    expect(kinds(all)).toEqual([...all.slice(1).map(() => "news"), "last"]);
    expect(all.length).toBeGreaterThan(1);
    expect(all.length - 1).toBeLessThanOrEqual((performance.now() - from) / NEWS_MS);
    const costs = all.flatMap((told) => ("news" in told ? [told.news.proof.cost] : []));
    expect([...costs].sort((a, b) => b - a)).toEqual(costs);
  });

  test("there is room for other things, and a cancel is heard", async () => {
    const host = used(inlineHost(stepping(1000, 2)));
    const told: Told[] = [];
    const cancel = host.start(job, EFFORT, (one) => told.push(one));
    const before = performance.now();
    await wait(30);
    expect(performance.now() - before).toBeLessThan(150);
    cancel();
    await wait(300);
    expect(told).toEqual([]);
  });

  test("a search that is held takes no time until it may go on, and then ends as it would have", async () => {
    const host = used(inlineHost(stepping(60, 5)));
    const told: Told[] = [];
    host.start(job, EFFORT, (one) => told.push(one));
    host.hold();
    await wait(400);
    expect(told).toEqual([]);
    host.goOn();
    host.goOn();
    await vi.waitFor(() => expect(told.at(-1)?.what).toBe("last"), 20_000);
    host.goOn();
    await wait(50);
    expect(told.filter(({ what }) => what === "last")).toHaveLength(1);
  });

  test("a search that fails leaves its job as it is", async () => {
    const failing = (): never => {
      throw new Error("no");
    };
    const host = used(
      inlineHost(function* () {
        yield undefined;
        return failing();
      }),
    );
    expect(await run(host, job)).toEqual([{ what: "left", why: "Error: no" }]);
  });
});

describe("a worker", () => {
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  test("hears of one job at a time by number, and what it tells of another is not heard", () => {
    const { host, workers } = fakes();
    const told: Told[] = [];
    host.start(job, 7, (one) => told.push(one))();
    host.start(job, 7, (one) => told.push(one));
    const [worker] = workers;
    expect(worker!.asked).toEqual([
      { start: 1, job, effort: 7 },
      { of: 1, what: "cancel" },
      { start: 2, job, effort: 7 },
    ]);
    worker!.says({ of: 1, what: "last", news: news(1) });
    worker!.says({ of: 2, what: "alive" });
    worker!.says({ of: 2, what: "news", news: news(5) });
    worker!.says({ of: 2, what: "last", news: news(3) });
    worker!.says({ of: 2, what: "news", news: news(2) });
    expect(told).toEqual([
      { what: "news", news: news(5) },
      { what: "last", news: news(3) },
    ]);
    expect(workers.length).toBe(1);
  });

  test("that gives no sign of life is ended, its job left, and the next has another worker", async () => {
    const { host, workers, logged } = fakes();
    const first = run(host, job);
    workers[0]!.says({ of: 1, what: "news", news: news(5) });
    vi.advanceTimersByTime(20_000);
    expect(kinds(await first)).toEqual(["news", "left"]);
    expect(workers[0]!.ended).toBe(true);
    expect(logged.join()).toContain("nothing was heard of it for 20 s");
    const second = run(host, job);
    workers[1]!.says({ of: 2, what: "last", news: news(1) });
    expect(kinds(await second)).toEqual(["last"]);
    workers[0]!.says({ of: 2, what: "last", news: news(0) });
  });

  test("goes on as long as it gives signs of life", async () => {
    const { host, workers } = fakes();
    const all = run(host, job);
    for (let i = 0; i < 8; i++) {
      vi.advanceTimersByTime(19_000);
      workers[0]!.says({ of: 1, what: "alive" });
    }
    workers[0]!.says({ of: 1, what: "last", news: news(1) });
    expect(kinds(await all)).toEqual(["last"]);
    expect(workers[0]!.ended).toBe(false);
  });

  test("with nothing to do is ended, and another is started when there is", async () => {
    const { host, workers } = fakes();
    const all = run(host, job);
    workers[0]!.says({ of: 1, what: "last", news: news(1) });
    await all;
    vi.advanceTimersByTime(9_000);
    host.start(job, EFFORT, () => {})();
    vi.advanceTimersByTime(9_000);
    expect(workers.map(({ ended }) => ended)).toEqual([false]);
    vi.advanceTimersByTime(1_000);
    expect(workers.map(({ ended }) => ended)).toEqual([true]);
    host.start(job, EFFORT, () => {});
    expect(workers.length).toBe(2);
  });

  test("that does not leave off a cancelled job is ended, and the next job begins anew elsewhere", async () => {
    const { host, workers } = fakes();
    const cancel = host.start(job, EFFORT, () => {});
    workers[0]!.says({ of: 1, what: "alive" });
    cancel();
    const next = run(host, job);
    vi.advanceTimersByTime(2000);
    expect(workers.map(({ ended }) => ended)).toEqual([true, false]);
    expect(workers[1]!.asked).toEqual([{ start: 2, job, effort: EFFORT }]);
    workers[1]!.says({ of: 2, what: "last", news: news(1) });
    expect(kinds(await next)).toEqual(["last"]);
  });

  test("that breaks down leaves its job as it is; after three in a row there are no more", async () => {
    const { host, workers, logged } = fakes();
    for (let i = 0; i < 3; i++) {
      const all = run(host, job);
      workers[i]!.says({ of: 0, what: "alive" });
      workers[i]!.breaks("out of memory");
      expect(await all).toEqual([{ what: "left", why: "out of memory" }]);
    }
    expect(kinds(await run(host, job))).toEqual(["left"]);
    expect(workers.length).toBe(3);
    expect(logged.length).toBe(3);
  });

  test("that does not start, or ends before it says anything, gives way to the search between the keys", async () => {
    const throwing = workerHost(
      () => {
        throw new Error("no threads here");
      },
      { otherwise: inlineHost(), log: () => {} },
    );
    expect((await run(used(throwing), job)).at(-1)?.what).toBe("last");
    const { host, workers, logged } = fakes();
    const all = run(host, job);
    workers[0]!.breaks("there is no such file");
    expect((await all).at(-1)?.what).toBe("last");
    expect((await run(host, job)).at(-1)?.what).toBe("last");
    expect(workers.length).toBe(1);
    expect(logged).toEqual([
      "Better layouts are looked for between the keys, since no worker starts: there is no such file",
    ]);
  });
});

test("a thread whose program is missing gives way too, and a job cancelled then is cancelled", async () => {
  const host = used(workerHost(threadOf("/nowhere.js"), { otherwise: inlineHost(), log: () => {} }));
  const told: Told[] = [];
  const cancel = host.start(boards(226), EFFORT, (one) => told.push(one));
  await wait(100);
  cancel();
  const before = told.length;
  await wait(300);
  expect(told.length).toBe(before);
  expect((await run(host, job)).at(-1)?.what).toBe("last");
});

describe("at work", () => {
  test("it says that it listens, that it begins, and leaves off when it is told to", async () => {
    const sent: FromWorker[] = [];
    const hear = atWork((message) => sent.push(message));
    expect(sent).toEqual([{ of: 0, what: "alive" }]);
    hear({ start: 1, job: boards(226), effort: EFFORT });
    hear({ of: 1, what: "cancel" });
    hear({ start: 2, job, effort: EFFORT });
    await wait(300);
    expect(sent.map(({ of, what }) => `${of} ${what}`)).toEqual(["0 alive", "1 alive", "2 alive", "2 last"]);
  });
});

describe("a key while a worker is at work", () => {
  test("holds it until it may go on", async () => {
    const { host, workers } = fakes();
    host.hold();
    host.start(job, EFFORT, () => {});
    const [worker] = workers;
    host.hold();
    host.goOn();
    expect(worker!.asked.slice(1)).toEqual([
      { of: 1, what: "hold" },
      { of: 1, what: "goOn" },
    ]);
  });

  test("is heard between two slices", async () => {
    const sent: FromWorker[] = [];
    const hear = atWork((message) => sent.push(message));
    hear({ start: 1, job, effort: EFFORT });
    hear({ of: 1, what: "hold" });
    await wait(300);
    expect(sent.map(({ of, what }) => `${of} ${what}`)).toEqual(["0 alive", "1 alive"]);
    hear({ of: 1, what: "goOn" });
    await vi.waitFor(() => expect(sent.at(-1)?.what).toBe("last"), 20_000);
  });
});

describe("what is kept", () => {
  test("is found by what it answers, and what was asked for longest ago goes first", () => {
    const kept = keptLayouts();
    const all = Array.from({ length: 70 }, (_, i) => ({ ...boardPlan(3), kerf: i }));
    for (const one of all) kept.keep({ kind: "boards", job: one }, news(one.kerf));
    expect(kept.boards({ ...all[0]! })?.proof.cost).toBe(0);
    kept.trim([{ kind: "boards", job: all[1]! }]);
    const left = all.filter((one) => kept.has({ kind: "boards", job: one })).map(({ kerf }) => kerf);
    expect(left).toEqual([0, 1, ...Array.from({ length: 62 }, (_, i) => i + 8)]);
  });

  test("is the latest news of a job that is still looked for, and nothing of one that ended with nothing", () => {
    const kept = keptLayouts(() => news(9));
    expect(kept.boards(boardPlan(3))?.proof.cost).toBe(9);
    kept.keep(boards(3), null);
    expect(kept.boards(boardPlan(3))).toBeUndefined();
  });
});
