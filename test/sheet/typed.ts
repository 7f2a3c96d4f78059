/** Compares a TypeScript type with a JSON Schema, both ways, by the compiler itself. For tests. */
import ts from "typescript";

export interface Schema {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Schema>>;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly anyOf?: readonly Schema[];
  readonly items?: Schema | false;
  readonly prefixItems?: readonly Schema[];
  readonly properties?: Readonly<Record<string, Schema>>;
  readonly required?: readonly string[];
}

/**
 * Where the schema and the interface of that name in that file part ways, a sentence each. What the schema lacks stands
 * there ready to be put in, but for its description.
 */
export function differences(file: string, name: string, schema: Schema): string[] {
  const program = ts.createProgram([file], { strict: true, target: ts.ScriptTarget.ES2022, noEmit: true });
  const checker = program.getTypeChecker();
  const source = program.getSourceFile(file)!;
  const compared = new Set<string>();

  const declared = source.statements.find((s) => ts.isInterfaceDeclaration(s) && s.name.text === name);
  if (!declared) return [`${file} has no interface ${name}`];
  return compare(checker.getTypeAtLocation(declared), schema, name);

  /** A definition is compared once, and its fields are then named by it. */
  function compare(type: ts.Type, given: Schema, path: string): string[] {
    const known = given.$ref?.replace("#/$defs/", "");
    if (known === undefined) return compareNull(type, given, path);
    const own = schema.$defs?.[known];
    if (type.symbol?.name !== known) return [differs(type, path)];
    if (own === undefined) return [`$defs has no ${known}`];
    if (compared.has(known)) return [];
    compared.add(known);
    return compareNull(type, own, known);
  }

  function compareNull(type: ts.Type, given: Schema, path: string): string[] {
    const nullable = type.isUnion() && type.types.some(isNull);
    if (nullable !== allowsNull(given)) return [differs(type, path)];
    const values = type.isUnion() ? type.types.filter((one) => !isNull(one) && !isUndefined(one)) : [type];
    const rest = given.anyOf?.find((one) => one.type !== "null");
    const [shape] = values as [ts.Type];
    if (rest) return compare(shape, rest, path);
    if (checker.isTupleType(shape)) return compareTuple(shape, given, path);
    if (checker.isArrayType(shape)) return compareList(shape, given, path);
    if (shape.flags & ts.TypeFlags.Object) return compareObject(shape, given, path);
    return plain(values) === plainOf(given) ? [] : [differs(type, path)];
  }

  function compareTuple(type: ts.Type, given: Schema, path: string): string[] {
    const items = itemsOf(type);
    const own = given.prefixItems ?? [];
    if (own.length !== items.length || given.items !== false) return [differs(type, path)];
    return items.flatMap((item, i) => compare(item, own[i]!, `${path}[${i}]`));
  }

  function compareList(type: ts.Type, given: Schema, path: string): string[] {
    if (given.type !== "array" || !given.items) return [differs(type, path)];
    return compare(itemsOf(type)[0]!, given.items, `${path}[]`);
  }

  function compareObject(type: ts.Type, given: Schema, path: string): string[] {
    if (!given.properties) return [differs(type, path)];
    const properties = type.getProperties();
    const names = properties.map((property) => property.name);
    const strange = Object.keys(given.properties).filter((key) => !names.includes(key));
    return [
      ...properties.flatMap((property) => compareProperty(property, given, `${path}.${property.name}`)),
      ...strange.map((key) => `${path}.${key} is in the schema only`),
    ];
  }

  function compareProperty(property: ts.Symbol, given: Schema, path: string): string[] {
    const type = checker.getTypeOfSymbol(property);
    const optional = isOptional(property);
    const own = given.properties?.[property.name];
    if (own === undefined)
      return [`${path} is not in the schema: add "${property.name}": ${fragment(type, words(property))}`];
    const required = given.required?.includes(property.name) ?? false;
    const list = optional ? "may be missing: take it out of" : "is always there: add it to";
    return [
      ...compare(optional ? withoutUndefined(type) : type, own, path),
      ...(required === optional ? [`${path} ${list} "required"`] : []),
    ];
  }

  /** With null kept, where it may be that. */
  function withoutUndefined(type: ts.Type): ts.Type {
    return type.isUnion() && type.types.some(isNull) ? type : checker.getNonNullableType(type);
  }

  function itemsOf(type: ts.Type): readonly ts.Type[] {
    return checker.getTypeArguments(type as ts.TypeReference);
  }

  function words(property: ts.Symbol): string {
    return ts.displayPartsToString(property.getDocumentationComment(checker)) || "One sentence.";
  }

  function differs(type: ts.Type, path: string): string {
    return `${path} is ${checker.typeToString(type)}: write ${fragment(type, "One sentence.")}`;
  }

  /** The schema of a type, to be put in by hand. */
  function fragment(type: ts.Type, description: string): string {
    return JSON.stringify({ description, ...schemaOf(type) });
  }

  function schemaOf(type: ts.Type): object {
    const values = type.isUnion() ? type.types.filter((one) => !isNull(one) && !isUndefined(one)) : [type];
    const [shape] = values as [ts.Type];
    const nullable = type.isUnion() && type.types.some(isNull);
    const own = plain(values) === "object" ? structureOf(shape) : flat(values);
    return nullable ? { anyOf: [own, { type: "null" }] } : own;
  }

  function structureOf(type: ts.Type): object {
    if (checker.isTupleType(type)) {
      const prefixItems = itemsOf(type).map(schemaOf);
      return { type: "array", prefixItems, items: false, minItems: prefixItems.length };
    }
    if (checker.isArrayType(type)) {
      return { type: "array", items: schemaOf(itemsOf(type)[0]!) };
    }
    if (schema.$defs?.[type.symbol.name]) return { $ref: `#/$defs/${type.symbol.name}` };
    const properties = type.getProperties();
    const inner = properties.map((p) => [
      p.name,
      { description: words(p), ...schemaOf(checker.getTypeOfSymbol(p)) },
    ]);
    const required = properties.filter((p) => !isOptional(p)).map((p) => p.name);
    return { type: "object", properties: Object.fromEntries(inner), required };
  }
}

const isOptional = (property: ts.Symbol): boolean => (property.flags & ts.SymbolFlags.Optional) !== 0;
const isNull = (type: ts.Type): boolean => (type.flags & ts.TypeFlags.Null) !== 0;
const isUndefined = (type: ts.Type): boolean => (type.flags & ts.TypeFlags.Undefined) !== 0;
const kindsOf = ({ type }: Schema): readonly string[] => (typeof type === "string" ? [type] : (type ?? []));
const allowsNull = (schema: Schema): boolean =>
  kindsOf(schema).includes("null") || (schema.anyOf ?? []).some(({ type }) => type === "null");

/** `string`, `number`, `boolean`, the values of a union in order, or `object`: the same for a type and for its schema. */
function plain(values: readonly ts.Type[]): string {
  if (values.every((one) => one.isLiteral()))
    return valuesOf(values.map((one) => (one as ts.LiteralType).value));
  const flags = values[0]!.flags;
  if (flags & ts.TypeFlags.String) return "string";
  if (flags & ts.TypeFlags.Number) return "number";
  return flags & ts.TypeFlags.BooleanLike ? "boolean" : "object";
}

function plainOf(schema: Schema): string {
  if (schema.const !== undefined) return valuesOf([schema.const]);
  if (schema.enum) return valuesOf(schema.enum);
  const [kind = ""] = kindsOf(schema).filter((one) => one !== "null");
  return kind === "integer" ? "number" : kind;
}

const valuesOf = (values: readonly unknown[]): string => JSON.stringify([...values].map(String).sort());

function flat(values: readonly ts.Type[]): object {
  if (!values.every((one) => one.isLiteral())) return { type: plain(values) };
  const all = values.map((one) => (one as ts.LiteralType).value);
  return all.length === 1 ? { const: all[0] } : { enum: all };
}
