// Of Qt's own, found when the app's tests end under a sanitizer: what it keeps for each thread (a collator; faces and engines of fonts) is
// freed by stores that are gone already when the last thread is. The functions that make the latter have no names in the library, so the
// library is named.

extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:QCollator::defaultCompare\nleak:libQt6Gui.so\n"; }
