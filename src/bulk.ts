export { type AtFactor, type Coefficient, Coefficients, coefficients } from "./bulk/coefficients.ts";
export {
  boundCodes,
  type PortionColumn,
  type PortionColumns,
  type RowStatus,
  statusCodes,
} from "./bulk/columns.ts";
export { type PortionsAtOptions, portionsAt, type Targets } from "./bulk/portionsAt.ts";
export {
  markCodes,
  type PortionsOfManyOptions,
  portionsOfMany,
  type RecipeColumn,
  type RecipeColumns,
} from "./bulk/portionsOfMany.ts";
