export { curvePicture } from "./card/curvePicture.ts";
export type { DrawingOptions } from "./card/drawing.ts";
export { type MultiplePictureOptions, multiplePicture } from "./card/multiplePicture.ts";
export {
  type CardAbout,
  type CardCaution,
  type CardDay,
  type CardDayFigure,
  type CardOptions,
  type CookCardOptions,
  cardPages,
  cookCard,
  type PagesOptions,
  personCard,
} from "./card/personCard.ts";
export { type ShoppingCardOptions, shoppingCard } from "./card/shoppingCard.ts";
export { weekPicture } from "./card/weekPicture.ts";
