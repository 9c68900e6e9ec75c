export { loadFrom, loadRows, searchAppliances } from "@stayput/catalogue";
