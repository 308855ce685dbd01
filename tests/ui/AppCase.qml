import QtTest

// A test of the screens: any warning while it runs, of QML or of Qt, fails it.
TestCase {
    function init() { failOnWarning(/.*/); }
}
