// Plants that boxes grow: which are eaten, and which are only looked at.
import { COMMON_PRACTICE, type Row } from "./row";

export type PlantUse = "eaten" | "looked at";

/** What a plant is grown for, by its name in one or in many; undefined for a name that is in no table. */
export function plantUse(name: string): PlantUse | undefined {
  return singulars(name)
    .map((one) => USES.get(one))
    .find((use) => use !== undefined);
}

/** Names of the plants known, in alphabetical order. */
export const plantNames = (): readonly string[] => [...USES.keys()].sort();

/** A name as it is, and as it may be in the singular: tomatoes, berries, radishes, marigolds. */
const singulars = (name: string): string[] => [
  name,
  name.replace(/ies$/, "y"),
  name.replace(/ves$/, "f"),
  name.replace(/es$/, ""),
  name.replace(/s$/, ""),
];

const EATEN =
  `lettuce spinach chard kale collard cabbage broccoli cauliflower sprout kohlrabi arugula rocket cress endive
chicory radicchio mizuna pak-choi bok-choy sorrel purslane salad salad-green green mustard-green microgreen celery celeriac
fennel rhubarb asparagus artichoke leek onion spring-onion scallion shallot garlic radish turnip rutabaga swede beet beetroot
carrot parsnip potato sweet-potato yam horseradish tomato cherry-tomato pepper chili eggplant aubergine cucumber gherkin squash
summer-squash winter-squash zucchini courgette pumpkin melon watermelon okra corn sweetcorn pea snap-pea snow-pea bean
bush-bean pole-bean runner-bean broad-bean soybean lentil peanut strawberry raspberry blackberry blueberry currant gooseberry
berry grape apple pear plum fig lemon lime herb basil parsley cilantro coriander dill chive mint thyme oregano marjoram sage
rosemary tarragon chervil savory lovage lemon-balm bay stevia vegetable fruit`.split(/\s+/);

const LOOKED_AT =
  `flower marigold lavender petunia geranium pelargonium begonia impatiens lobelia alyssum zinnia cosmos
aster dahlia daisy pansy viola violet snapdragon salvia verbena fuchsia hydrangea rose tulip daffodil narcissus hyacinth crocus
snowdrop iris lily hosta fern ivy heather sedum stonecrop succulent cactus grass ornamental-grass boxwood box-tree juniper
yew clematis wisteria jasmine honeysuckle foxglove lupin delphinium hollyhock poppy primrose cyclamen chrysanthemum
coneflower black-eyed-susan wildflower moss bamboo`.split(/\s+/);

export const cropRows: readonly Row<PlantUse>[] = [
  ...EATEN.map((key) => rowOf(key, "eaten")),
  ...LOOKED_AT.map((key) => rowOf(key, "looked at")),
];

function rowOf(key: string, value: PlantUse): Row<PlantUse> {
  return { key, value, unit: "", source: COMMON_PRACTICE };
}

const USES: ReadonlyMap<string, PlantUse> = new Map(cropRows.map(({ key, value }) => [key, value]));
