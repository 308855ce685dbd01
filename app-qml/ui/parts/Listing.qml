pragma Singleton
import QtQuick

// Several things on one line, those that are not said left out.
QtObject {
    function said(parts) { return parts.filter(part => part.length > 0); }
    function dotted(parts) { return said(parts).join("  ·  "); }
    function commas(parts) { return said(parts).join(", "); }
}
