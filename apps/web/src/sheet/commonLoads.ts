/** What most vans run: rows of the catalogue to tick on an empty sheet, fridges first since they take most. */
export const commonLoads: readonly { readonly id: string; readonly name: string }[] = [
  { id: "fridge-portable-42", name: "Portable fridge" },
  { id: "lights", name: "Lights" },
  { id: "water-pump", name: "Water pump" },
  { id: "phones", name: "Phones" },
  { id: "tv", name: "Television" },
  { id: "roof-fan", name: "Roof fan" },
];
