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
