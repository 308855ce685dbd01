pragma Singleton
import QtQuick

// What services and means of payment are called: services by their names in the price list (core/desk/prices.h), means and
// reasons of stock by their numbers in core/model/choices.h.
QtObject {
    readonly property var services: ({
        "labour": qsTr("Labour"), "string": qsTr("String"), "stencil": qsTr("Stencil"), "rush": qsTr("Rush"),
        "on-court rush": qsTr("On-court rush"), "grommet strip": qsTr("Grommet strip"), "tubing": qsTr("Tubing"),
        "string, mains": qsTr("String, mains"), "string, crosses": qsTr("String, crosses"), "discount": qsTr("Discount")
    })
    readonly property var means: [qsTr("Not said"), qsTr("Cash"), qsTr("Card"), qsTr("Room account"), qsTr("Prize money")]

    // Words that nobody translates, such as those of a ware, stay as they were typed.
    function service(name) {
        const known = services[name];
        if (known !== undefined) return known;
        for (const part of ["string, mains ", "string, crosses ", "string "])
            if (name.startsWith(part)) return qsTr("%1: %2").arg(services[part.trim()]).arg(name.slice(part.length));
        return name;
    }
    function paidBy(number) { return means[number] ?? qsTr("Another way"); }
    // What a line on an account is for.
    function line(one) {
        const what = one.payment ? qsTr("Paid: %1").arg(paidBy(one.means)) : service(one.service);
        return one.reverses ? qsTr("Reversed: %1").arg(what) : what;
    }
    function jobTitle(tag, racket) {
        return Listing.dotted([tag.length > 0 ? qsTr("Tag %1").arg(tag) : "", racket.length > 0 ? qsTr("Racket %1").arg(racket) : ""]);
    }
}
