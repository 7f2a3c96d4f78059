// Tables of the trade: every row says where it comes from, and the lookups find what they should.
import { describe, expect, it } from "vitest";
import {
  allRows,
  categoriesMeasuring,
  cautions,
  cautionsFor,
  cite,
  crop,
  cropNames,
  decayOf,
  designValues,
  editDistance,
  fasteningGravity,
  fill,
  fillNames,
  finish,
  finishNames,
  flatUseFactor,
  leastBite,
  leastBiteShare,
  liner,
  linerNames,
  metricPanel,
  movementOf,
  nearestNames,
  nearestSections,
  panel,
  panelNames,
  pilotBand,
  type Row,
  screwGauge,
  screwGauges,
  section,
  sectionNames,
  sizeFactor,
  southernPineBending,
  species,
  speciesNames,
  structuralCaution,
  usuallySoldAs,
  usualScrewLengths,
  weightOf,
  woodDensity,
  woodOverTip,
} from "../server/trade";
import { nearest64th, tapeNumber } from "../server/trade/tape";

function sourced({ source }: Row<unknown>): boolean {
  const { document, edition, table, via, confidence } = source;
  if (confidence === "common practice")
    return cite(source).endsWith("common practice") || table !== undefined;
  if (confidence === "memory") return cite(source).endsWith("from memory");
  return document !== "" && (edition !== undefined || table !== undefined || via !== undefined);
}

describe("every row", () => {
  it("names its source, or says that there is none", () => {
    expect(allRows().length).toBeGreaterThan(300);
    expect(allRows().filter((row) => !sourced(row))).toEqual([]);
    expect(
      sourced({ key: "bare", value: 1, unit: "", source: { document: "a book", confidence: "read" } }),
    ).toBe(false);
  });

  it("gives inch lengths as tape text and metric ones as numbers", () => {
    const single = allRows().filter(({ value }) => typeof value === "string" || typeof value === "number");
    const inch = single.filter(({ unit, key }) => unit === "in" && !key.startsWith("sold "));
    expect(inch.length).toBeGreaterThan(50);
    expect(inch.filter(({ value }) => typeof value !== "string" || tapeNumber(value) === undefined)).toEqual(
      [],
    );
    const metric = single.filter(({ unit, key }) => unit === "mm" && !key.startsWith("sold "));
    expect(metric.filter(({ value }) => typeof value !== "number")).toEqual([]);
  });

  it("cites a copy as the document with who reproduced it", () => {
    expect(cite(section("2x4", "ps20-dry")!.source)).toBe(
      "PS 20-20, dressed dry sizes (as reproduced by engineeringtoolbox.com d_1270)",
    );
    expect(cite(section("38x89", "ps20-dry")!.source)).toBe(
      "CSA O141, metric names of the inch sizes, from memory",
    );
    expect(cite(section("5/4x6", "ps20-dry")!.source)).toBe("common practice");
    expect(cite(screwGauge(8)!.threadsPerInch.source)).toBe("wood screw threads per inch, from memory");
    expect(cite(screwGauge(8)!.shank.source)).toBe(
      "ASME B18.6.1, D = 0.060 + 0.013 n (as reproduced by a screw seller's web page; not confirmed)",
    );
    expect(cite(fill("sand")!.dry.source)).toBe("from memory");
  });

  it("of a lumber table has a key of its own", () => {
    const lumber = allRows().filter(({ key }) => key.startsWith("thickness ") || key.startsWith("width "));
    expect(new Set(lumber.map(({ key }) => key)).size).toBe(lumber.length);
  });
});

describe("sections", () => {
  it("reads a name however it is spaced, and both names of a quarter thickness", () => {
    expect(section(" 2 × 4 ", "ps20-dry")).toEqual(section("2x4", "ps20-dry"));
    expect(section("2X4", "ps20-dry")?.nominal).toBe("2x4");
    expect(section("1-1/4x6", "ps20-dry")).toEqual(section("5/4x6", "ps20-dry"));
  });

  it("reads inch names as dry lumber where metric boards are the standard, and metric names anywhere", () => {
    expect(section("2x4", "planed-metric")).toEqual(section("2x4", "ps20-dry"));
    const metric = { nominal: "45x145", thickness: 45, width: 145, unit: "mm" };
    expect(section("45x145", "planed-metric")).toMatchObject(metric);
    expect(section("45x145", "ps20-green")).toMatchObject(metric);
    expect(section("20.5x94", "planed-metric")).toMatchObject({ thickness: 20.5, width: 94 });
  });

  it("knows nothing of sizes that no rule covers", () => {
    for (const name of [
      "",
      "2x",
      "x4",
      "2x4x8",
      "4x2",
      "95x18",
      "1x1",
      "2x7",
      "2x40",
      "0x4",
      "1/0x4",
      "6x16",
      "leg",
    ])
      expect(section(name, "ps20-dry"), name).toBeUndefined();
  });

  it("knows every name it offers, under every standard", () => {
    for (const standard of ["ps20-dry", "ps20-green", "planed-metric"] as const)
      for (const name of sectionNames(standard)) expect(section(name, standard)?.nominal).toBe(name);
  });

  it("offers names thinnest first, then narrowest", () => {
    for (const standard of ["ps20-dry", "planed-metric"] as const) {
      const sizes = sectionNames(standard).map((name) => name.split("x").map((side) => tapeNumber(side)!));
      const sorted = sizes.toSorted(([t1, w1], [t2, w2]) => t1! - t2! || w1! - w2!);
      expect(sizes).toEqual(sorted);
    }
  });

  it("finds near names by size first, then by spelling, and none when nothing is near", () => {
    expect(nearestSections("2x7", "ps20-dry", 2)).toEqual(["2x6", "2x8"]);
    expect(nearestSections("4x2", "ps20-dry", 1)).toEqual(["2x4"]);
    expect(nearestSections("1-1/2x3-1/2", "ps20-dry", 1)).toEqual(["2x4"]);
    expect(nearestSections("50x100", "ps20-dry", 1)).toEqual(["45x95"]);
    expect(nearestSections("95x18", "planed-metric", 1)).toEqual(["18x95"]);
    expect(nearestSections("2c4", "ps20-dry", 1)).toEqual(["2x4"]);
    expect(nearestSections("2x40", "ps20-dry", 3)).toEqual([]);
    expect(nearestSections("plank", "ps20-dry", 3)).toEqual([]);
    expect(nearestSections("2x7", "ps20-dry", 0)).toEqual([]);
  });
});

describe("panels", () => {
  it("finds each by name, thinnest first, within its bounds", () => {
    for (const name of panelNames()) {
      const known = panel(name) ?? metricPanel(Number(name.replace("mm", "")))!;
      const [min, size, max] = [known.min, known.thickness, known.max].map((one) => tapeNumber(String(one))!);
      expect(min!, name).toBeLessThan(size!);
      expect(size!, name).toBeLessThan(max!);
    }
    expect(panel("2/3")).toBeUndefined();
    expect(metricPanel(17)).toBeUndefined();
  });

  it("says what a measured panel may be stamped, and what is handed over for a plain name", () => {
    expect(categoriesMeasuring(0.72)).toEqual(["23/32", "3/4"]);
    expect(categoriesMeasuring(2)).toEqual([]);
    expect(usuallySoldAs("3/4")?.value).toBe("23/32");
    expect(usuallySoldAs("7/8")).toBeUndefined();
  });
});

describe("woods", () => {
  it("offers every name once, in order, with a title for people", () => {
    const names = speciesNames();
    expect([...new Set(names)].sort()).toEqual(names);
    expect(species("western-redcedar")?.title).toBe("western redcedar");
    expect(species("northern-white-cedar")?.title).toBe("northern white-cedar");
    expect(species("douglas-fir-interior-north")?.title).toBe("Douglas-fir interior north");
    expect(species("spruce-pine-fir-south")?.title).toBe("spruce-pine-fir south");
    expect(species("plastic")).toBeUndefined();
  });

  it("lets a wood carry the gravity of its group, and keeps what is unknown unknown", () => {
    expect(species("western-redcedar")).toMatchObject({ group: "western-cedars", gravity: { value: 0.36 } });
    expect(species("catalpa")?.gravity).toBeUndefined();
    expect(weightOf(species("catalpa")!, 12)).toBeUndefined();
    expect(fasteningGravity(species("catalpa")!)).toBeUndefined();
  });

  it("weighs by the heavier of two tables and fastens by NDS", () => {
    const tamarack = species("tamarack")!;
    expect(fasteningGravity(tamarack)?.gravity).toBe(0.41);
    expect(weightOf(tamarack, 12)?.density).toBeCloseTo(62.4 * 0.53 * 1.12, 6);
    for (const name of speciesNames()) {
      const wood = species(name)!;
      const weight = weightOf(wood, 12);
      if (weight !== undefined)
        expect(weight.density, name).toBeGreaterThanOrEqual(woodDensity(fasteningGravity(wood)!.gravity, 12));
    }
  });

  it("takes bought boards as sapwood unless they are heartwood", () => {
    const cedar = species("western-redcedar")!;
    expect(decayOf(cedar, false)?.value).toBe("slight");
    expect(decayOf(cedar, true)?.value).toBe("resistant");
    expect(decayOf(species("redwood")!, true)?.value).toBe("moderate");
  });

  it("gives movement and design values by name, and none for names without a row", () => {
    expect(movementOf("white-oak")?.value.tangential).toBe(0.00365);
    expect(movementOf("aspen")).toBeUndefined();
    expect(designValues("hem-fir")?.value.bending).toBe(850);
    expect(designValues("aspen")).toBeUndefined();
    expect(southernPineBending(8)?.value).toBe(925);
    expect([sizeFactor(2), sizeFactor(4), sizeFactor(12)].map((row) => row?.value)).toEqual([1.5, 1.5, 1]);
    expect([flatUseFactor(4), flatUseFactor(12)].map((row) => row?.value)).toEqual([1.1, 1.2]);
    expect(sizeFactor(14)).toBeUndefined();
  });
});

describe("screws", () => {
  it("accepts any hole of the published band and names the rule it follows", () => {
    const soft = pilotBand(8, 0.36)!;
    expect(soft.noneForStrength).toBe(true);
    expect(soft.suggested).toBeGreaterThan(0);
    expect(soft.rule.name).toBe("older rule for softwood, 70% of root");
    expect(soft.least).toBeLessThan(5 / 64);
    expect(soft.most).toBeGreaterThan(1 / 8);
    expect(soft.most).toBeLessThan(9 / 64);
    expect(pilotBand(5, 0.42)).toBeUndefined();
  });

  it("has rules for every gravity, the suggestion among them, and roots thinner than shanks", () => {
    for (const { gauge, shank, root } of screwGauges) {
      expect(Number(root.value)).toBeLessThan(Number(shank.value));
      for (let gravity = 0.3; gravity < 0.9; gravity += 0.01) {
        const band = pilotBand(gauge, gravity)!;
        expect(band.rules).toContain(band.rule);
        expect(band.suggested).toBeGreaterThan(band.least);
        expect(band.suggested).toBeLessThan(band.most);
      }
    }
  });

  it("keeps wood over the tip and a bite in the second piece (common practice)", () => {
    expect([woodOverTip.value, leastBite.value, leastBiteShare.value]).toEqual(["1/8", "1/2", 0.5]);
    expect([woodOverTip, leastBite, leastBiteShare].map(({ source }) => cite(source))).toEqual(
      Array(3).fill("common practice"),
    );
  });

  it("lists usual lengths in order", () => {
    for (const gauge of [6, 8, 10]) {
      const lengths = usualScrewLengths(gauge)!.map((length) => tapeNumber(length)!);
      expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    }
    expect(usualScrewLengths(8)).toContain("1-5/8");
    expect(usualScrewLengths(3)).toBeUndefined();
  });
});

describe("fills, finishes, liners, crops", () => {
  it("offers names in order, and finds each", () => {
    expect(fillNames()).toEqual([
      "clay",
      "compost",
      "gravel",
      "potting-mix",
      "raised-bed-mix",
      "sand",
      "soil",
      "topsoil",
      "water",
    ]);
    for (const name of fillNames()) expect(fill(name)?.name).toBe(name);
    for (const name of finishNames()) expect(finish(name)?.name).toBe(name);
    for (const name of linerNames()) expect(liner(name)?.name).toBe(name);
    for (const name of cropNames()) expect(crop(name)?.name).toBe(name);
    expect([fill("feathers"), finish("jam"), liner("lace"), crop("stone")]).toEqual(Array(4).fill(undefined));
  });

  it("never weighs a fill lighter wet than dry", () => {
    for (const { dry, moist, saturated } of fillNames().map((name) => fill(name)!)) {
      expect(saturated.value).toBeGreaterThanOrEqual(moist?.value ?? dry.value);
      expect(moist?.value ?? saturated.value).toBeGreaterThanOrEqual(dry.value);
    }
  });

  it("keeps a crop's container apart from its roots in open ground", () => {
    expect(crop("lettuce")?.containerDepth?.value).toEqual({ low: 4, high: 6 });
    expect(crop("lettuce")?.rootDepth?.value).toEqual({ low: 12, high: 18 });
    expect(crop("herbs")?.rootDepth).toBeUndefined();
  });
});

describe("cautions", () => {
  it("come up by what the plan does, each once, the structural one always", () => {
    expect(cautionsFor([])).toEqual([structuralCaution]);
    expect(structuralCaution.value.text).toContain("local code and a licensed professional decide");
    const keys = cautionsFor(["oil-finish", "rip", "circular-saw"]).map(({ key }) => key);
    expect(keys).toEqual([
      ...["estimate", "circular-saw", "rip", "blade-change", "eyes", "ears", "dust", "oily-rags"],
    ]);
  });

  it("are whole plain sentences, each with something that calls it up", () => {
    for (const { key, value } of cautions) {
      expect(value.when.length, key).toBeGreaterThan(0);
      expect(value.text, key).toMatch(/^[A-Z0-9].*\.$/);
      expect(value.text, key).not.toMatch(/\b(safe to|approved|guarantee)/i);
    }
    expect(new Set(cautions.map(({ key }) => key)).size).toBe(cautions.length);
  });
});

describe("near names and tape text", () => {
  it("counts letters added, dropped and changed", () => {
    expect(editDistance("kitten", "sitting")).toBe(3); // the textbook example of the Levenshtein distance
    expect(editDistance("", "abc")).toBe(3);
    expect(nearestNames("compots", fillNames(), 1)).toEqual(["compost"]);
    expect(nearestNames("concrete", fillNames(), 3)).toEqual([]);
  });

  it("reads and writes sixty-fourths", () => {
    expect([tapeNumber("5-1/2"), tapeNumber("3/4"), tapeNumber("6"), tapeNumber("0.688")]).toEqual([
      5.5, 0.75, 6, 0.688,
    ]);
    expect([tapeNumber("1/0"), tapeNumber(""), tapeNumber("-1"), tapeNumber("1 1/2")]).toEqual(
      Array(4).fill(undefined),
    );
    expect([nearest64th(0.0917), nearest64th(0.999), nearest64th(1.51), nearest64th(0)]).toEqual([
      "3/32",
      "1",
      "1-33/64",
      "0",
    ]);
    for (let parts = 0; parts < 200; parts++) expect(tapeNumber(nearest64th(parts / 64))).toBe(parts / 64);
  });
});
