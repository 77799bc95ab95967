// Comfort only: every page works without this. It keeps the draft in this
// browser, until it is cleared, and opens and saves text files here.
"use strict";
