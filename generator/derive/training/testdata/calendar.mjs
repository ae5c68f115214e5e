// Reads a calendar with ical.js, a reader that knows nothing of the program,
// and prints what it found as JSON. Whatever it objects to is in "faults".
import { readFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import path from "node:path";

const [folder, file] = process.argv.slice(2);
const { default: ICAL } = await import(pathToFileURL(path.join(folder, "ical.js", "dist", "ical.js")));
const text = readFileSync(file, "utf8");
const out = { faults: [], events: [] };
try {
  const calendar = new ICAL.Component(ICAL.parse(text));
  if (calendar.name !== "vcalendar") out.faults.push("it is a " + calendar.name);
  for (const must of ["prodid", "version"]) {
    if (calendar.getAllProperties(must).length !== 1) out.faults.push(must + " is not there once"); // RFC 5545, 3.6
  }
  for (const part of calendar.getAllSubcomponents()) {
    if (part.name !== "vevent") out.faults.push("it holds a " + part.name);
    for (const must of ["uid", "dtstamp", "dtstart", "summary"]) {
      if (part.getAllProperties(must).length !== 1) out.faults.push(must + " is not there once"); // 3.6.1
    }
    const event = new ICAL.Event(part);
    const stamp = part.getFirstPropertyValue("dtstamp");
    if (!stamp || stamp.isDate || stamp.zone !== ICAL.Timezone.utcTimezone) out.faults.push("dtstamp is not in UTC"); // 3.8.7.2
    const alarms = part.getAllSubcomponents();
    for (const alarm of alarms) {
      if (alarm.name !== "valarm") out.faults.push("an event holds a " + alarm.name);
      for (const must of ["action", "description", "trigger"]) {
        if (alarm.getAllProperties(must).length !== 1) out.faults.push("an alarm's " + must + " is not there once"); // 3.6.6
      }
    }
    out.events.push({
      alarms: alarms.map((a) => ({
        action: a.getFirstPropertyValue("action"), text: a.getFirstPropertyValue("description"),
        before: -(a.getFirstPropertyValue("trigger")?.toSeconds?.() ?? 0) / 86400,
      })),
      uid: event.uid, summary: event.summary, day: event.startDate.toString(), whole: event.startDate.isDate,
      days: event.duration.toSeconds() / 86400, transp: part.getFirstPropertyValue("transp"),
    });
  }
} catch (bad) {
  out.faults.push(String(bad));
}
console.log(JSON.stringify(out));
