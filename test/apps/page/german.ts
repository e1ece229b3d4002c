export { de as german } from "darkroom-kinetics/texts/de";
