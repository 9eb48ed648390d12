export { default as MiniSearch } from "minisearch";
