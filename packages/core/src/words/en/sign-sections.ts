/** Headings of the sign catalogue. */
export const signSections = {
  "starting-and-idle": "Starting and idle",
  closing: "Closing the throttle",
  opening: "Opening the throttle",
  "part-throttle": "Part throttle",
  "wide-open": "Full throttle",
  "temperature-and-smell": "Heat, smell and fuel",
  "parts-seen": "Plug and piston",
  "smoke-and-consumption": "Smoke, oil and fuel used",
  "engine-tests": "Shown by a test",
};
