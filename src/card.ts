export {
  type CardAbout,
  type CardCaution,
  type CardDay,
  type CardDayFigure,
  type CardOptions,
  personCard,
} from "./card/personCard.ts";
