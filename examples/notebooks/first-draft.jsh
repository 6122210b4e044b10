// A first draft.
Length.cm(2.5);  // => 25 mm
/exit
