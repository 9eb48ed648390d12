export {
  type CardAbout,
  type CardCaution,
  type CardDay,
  type CardDayFigure,
  type CardHow,
  personCard,
} from "./card/personCard.ts";
