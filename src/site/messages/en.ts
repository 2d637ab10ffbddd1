/**
 * Every sentence of the pages, in English. ICU messages: `{gap}` is filled by the page, `{n, plural, …}` only chooses words. A number
 * is never printed from here (no `#`): it comes from the report, as `{figure}`.
 */
export const en = {
  // Pages
  "page.skip": "Skip to the report",
  "page.family.title": "{name} · {season}",
  "page.club.title": "{name} · summary for a club · {season}",
  "page.summary": "Hitting summary",
  "page.notice": "About this page",
  "page.asOf": "As of {day}",
  "page.period": "{start} to {end}",
  "page.contact": "Contact: {contact}",
  "page.index.title": "{name}",
  "page.index.head": "Private reports",
  "page.index.body":
    "Reports of this facility are private. Each one has its own link, known only to the people it was made for. If you are waiting for yours, ask your trainer.",
  "page.missing.title": "Page not found",
  "page.missing.head": "There is no page here",
  "page.missing.body":
    "The link may have been replaced or may have run out. Ask the trainer who sent it to you for the current one.",

  // Units
  "unit.mph": "mph",
  "unit.km/h": "km/h",
  "unit.deg": "°",
  "unit.s": "s",
  "unit.ft": "ft",
  "unit.m": "m",
  "unit.in": "in",
  "unit.cm": "cm",
  "unit.oz": "oz",
  "unit.g": "g",
  "unit.lb": "lb",
  "unit.kg": "kg",
  "unit.rpm": "rpm",

  // Metrics, and what they are in plain words
  "metric.bat_speed": "Bat speed",
  "metric.attack_angle": "Attack angle",
  "metric.swing_time": "Swing time",
  "metric.exit_velocity": "Exit velocity",
  "metric.launch_angle": "Launch angle",
  "metric.spray_angle": "Spray angle",
  "metric.distance": "Carry distance",
  "metric.hit_spin": "Spin of the batted ball",
  "about.bat_speed": "How fast the barrel travels at contact.",
  "about.attack_angle": "The angle at which the barrel travels at contact; above zero is upward.",
  "about.swing_time": "From the start of the swing to contact. A lower time is a quicker swing.",
  "about.exit_velocity": "How fast the ball leaves the bat, on balls that were hit.",
  "about.launch_angle": "The angle at which the ball leaves the bat; above zero is upward.",
  "about.spray_angle": "Direction of the batted ball; zero is straight to centre field, below zero toward left.",
  "about.distance": "How far the device estimates the ball would carry.",
  "about.hit_spin": "How fast the batted ball spins.",

  // How swings are made
  "environment.dry": "Dry swings",
  "environment.tee": "Tee",
  "environment.side-toss": "Side toss",
  "environment.front-toss": "Front toss",
  "environment.overhand": "Overhand",
  "environment.machine": "Machine",
  "environment.live": "Live pitching",
  "environment.game": "Games",
  "environment.none": "Not noted",
  "environment.others": "All other",
  "implement.game": "game bat",
  "implement.overload": "heavy bat",
  "implement.underload": "light bat",
  "implement.short": "short bat",
  "implement.long": "long bat",
  "implement.training": "training bat",
  "ball.baseball": "baseball",
  "ball.softball": "softball",
  "ball.soft": "soft ball",
  "side.left": "left side",
  "side.right": "right side",
  "purpose.training": "training swings",
  "purpose.test": "test swings",
  "purpose.fitting": "bat fitting",
  "purpose.game": "game swings",
  "place.facility": "at the facility",
  "place.home": "at home",
  "place.club": "at the club",
  "place.game": "at games",
  "swing.slap": "slaps",
  "swing.bunt": "bunts",
  "condition.any": "all swings together",
  "condition.pitch": "pitches of {low} to {high}",
  "condition.pooledShort": "Several set-ups are taken together here.",
  "condition.pooled":
    "Where several set-ups are taken together, each has a fixed share, so that a different mix of practice cannot look like a change.",

  // Athlete
  "athlete.bats.left": "bats left",
  "athlete.bats.right": "bats right",
  "athlete.bats.switch": "switch hitter",
  "hand.left": "left",
  "hand.right": "right",
  "hand.switch": "both sides",
  "sport.baseball": "Baseball",
  "sport.softball": "Softball",
  "level.high-school": "high school",
  "level.college": "college",
  "level.youth": "youth",
  "level.independent-professional": "independent professional",
  "level.middle-school": "middle school",
  "level.12u": "12U",
  "position.outfield": "outfield",
  "position.infield": "infield",
  "position.catcher": "catcher",
  "position.pitcher": "pitcher",
  "position.first base": "first base",
  "position.second base": "second base",
  "position.third base": "third base",
  "position.shortstop": "shortstop",
  "position.left field": "left field",
  "position.center field": "center field",
  "position.right field": "right field",
  "position.designated hitter": "designated hitter",
  "athlete.record": "{swings} on {days}",

  // Counts
  "count.swings": "{n, plural, one {{figure} swing} other {{figure} swings}}",
  "count.days": "{n, plural, one {{figure} training day} other {{figure} training days}}",
  "count.sessions": "{n, plural, one {{figure} session} other {{figure} sessions}}",
  "count.measures": "{n, plural, one {{figure} measure} other {{figure} measures}}",
  "count.rows": "{n, plural, one {{figure} row} other {{figure} rows}}",

  // What changed
  "change.head": "What changed",
  "change.none": "No measured swings of the season could be put in a series, so there is nothing to compare.",
  "change.noneOfMeasures":
    "None of the measures of the season has swings that count, so no change is given; what else was measured stands further down.",
  "change.lookedAt": "Looked at for the season: {measures}, of which {withSwings} had swings that count.",
  "change.fromTo": "{first} at the start, {last} at the end",
  "change.first": "Start",
  "change.last": "End",
  "change.over": "Change over the season",
  "change.estimate": "{estimate} over the season",
  "change.range":
    "Single {of, select, sessions {sessions} other {days}} scatter; allowing for that, the change lies somewhere between {low} and {high} (95% range; the line of {days}).",
  "change.rangeShort": "somewhere between {low} and {high}",
  "change.rangeShortZero": "somewhere between {low} and {high}, which takes in zero",
  "change.zero": "Zero, which would be no change, lies within this range.",
  "change.onlyBlocks":
    "No line was drawn for these {of, select, sessions {sessions} other {days}}, so only the values are shown.",
  "change.noBlocks": "{days}: too few to draw a line or to compare a start with an end.",
  "change.broken": "no change is given: the set-up changed on {day}",
  // One sentence for each verdict, the same numbers always the same sentence
  "says.clear-improvement":
    "Improved. Even the low end of the range, {least}, is more than the smallest change that matters ({worth}).",
  "says.improvement": "Improved. It may be small or large: between {least} and {most}.",
  "says.improvement-unweighed":
    "Improved, by something between {least} and {most}. Nobody has said yet which change matters here.",
  "says.small-improvement":
    "A small improvement, somewhere between {least} and {most}: probably less than matters in play ({worth}).",
  "says.same": "Stayed the same, and we can tell: any change is smaller than one that matters ({worth}).",
  "says.cannot-tell":
    "The measurements cannot tell yet: {days} so far, and about {needed} would be needed to see a change that matters.",
  "says.cannot-tell-long":
    "The measurements cannot tell. The days differ so much among themselves that a change which just matters would not show within one winter.",
  "says.cannot-tell-unweighed":
    "The measurements cannot tell yet: the change may lie anywhere between {low} and {high}.",
  "says.cannot-tell-looks-differ":
    "The measurements cannot tell yet: two ways of looking at the same {days} do not agree.",
  "says.small-decline":
    "A small decline, somewhere between {least} and {most}: probably less than matters in play ({worth}).",
  "says.decline": "Declined. It may be small or large: between {least} and {most}.",
  "says.decline-unweighed":
    "Declined, by something between {least} and {most}. Nobody has said yet which change matters here.",
  "says.clear-decline":
    "Declined. Even the low end of the range, {least}, is more than the smallest change that matters ({worth}).",
  "says.window-clear-improvement":
    "Closer to the window of {from} to {to}, and by more than the smallest change that matters: on average {start} outside it at the start, {end} at the end.",
  "says.window-improvement":
    "Closer to the window of {from} to {to}, by little or by much: on average {start} outside it at the start, {end} at the end.",
  "says.window-improvement-unweighed":
    "Closer to the window of {from} to {to}: on average {start} outside it at the start, {end} at the end.",
  "says.window-small-improvement":
    "A little closer to the window of {from} to {to}, probably less than matters in play: on average {start} outside it at the start, {end} at the end.",
  "says.window-same":
    "As near to the window of {from} to {to} as before, and we can tell: on average {start} outside it at the start, {end} at the end.",
  "says.window-cannot-tell":
    "The measurements cannot tell yet whether the swings came closer to the window of {from} to {to}: on average {start} outside it at the start, {end} at the end.",
  "says.window-small-decline":
    "A little further from the window of {from} to {to}, probably less than matters in play: on average {start} outside it at the start, {end} at the end.",
  "says.window-decline":
    "Further from the window of {from} to {to}, by little or by much: on average {start} outside it at the start, {end} at the end.",
  "says.window-decline-unweighed":
    "Further from the window of {from} to {to}: on average {start} outside it at the start, {end} at the end.",
  "says.window-clear-decline":
    "Further from the window of {from} to {to}, and by more than the smallest change that matters: on average {start} outside it at the start, {end} at the end.",
  "says.no-window": "No window is set for this measure, so more is neither better nor worse.",
  "says.too-few": "{days}: enough for a line, and too few for a judgement.",
  "says.one-session": "{days}: values, and no change to speak of.",
  "says.two-within-noise":
    "The difference is within what two days of a hitter who did not change may differ by ({noise}).",
  "says.two-beyond-noise":
    "The difference is more than two days of a hitter who did not change would differ by ({noise}). Two days are too few for a judgement.",
  "says.two-noise-unknown":
    "{days}. How much two days differ by chance is not known here, so nothing is said of a change.",
  "says.tests-noise-unknown":
    "Too few hitters took this test to know how much its days differ by chance, so nothing is said of a change.",
  "says.mix-moved": "The mixture of set-ups moved during the season, so start and end are not compared.",
  "says.broken": "The set-up changed on the way, so no change is given.",
  "says.byTests": "From the test days at both ends of the season.",
  "note.few-sessions": "Few days stand behind this.",
  "note.short-span": "They lie less than three weeks apart, so nothing is claimed about a whole season.",
  "note.no-second-look":
    "Two devices were joined here, which leaves no second way of looking; so nothing is called certain.",
  "note.worth-below-noise": "One day alone is too noisy to show the smallest change that matters.",
  "worth.configured": "What matters here: a change of {worth} or more, as the trainer set it.",
  "worth.season":
    "What matters here: a change of {worth} or more. That is a fifth of the spread among {athletes} hitters of this season, a convention.",
  "worth.reference":
    "What matters here: a change of {worth} or more. That is a fifth of the spread among {athletes} hitters of the same kind, a convention.",
  "count.hitters": "{n, plural, one {{figure} hitter} other {{figure} hitters}}",
  "change.earlyLate": "End less start: {estimate}, somewhere between {low} and {high}.",
  "peers.both":
    "Of a hundred hitters of the same kind, about {start} were below at the start, and about {end} at the end (plausibly {low} to {high}).",
  "peers.end": "Of a hundred hitters of the same kind, about {end} were below at the end (plausibly {low} to {high}).",
  "peers.endOnly": "Of a hundred hitters of the same kind, about {end} were below at the end.",
  "peers.group": "Compared with {hitters}: {group}; {source}{year}.",
  "peers.groupUnknown": "Compared with: {group}; {source}{year}.",
  "peers.alt": "{metric} among peers: eight of ten lie between {low} and {high}, half below {middle}.",
  "peers.altEnds":
    "{metric} among peers: eight of ten lie between {low} and {high}, half below {middle}. The hitter went from {start} to {end}.",
  "peers.year": ", {year}",
  "peers.tooFew":
    "{n, plural, one {Only {figure} hitter} other {Only {figure} hitters}} of the same kind on file: too few to compare with.",
  "peers.line": "{label}: {value}, an average that was published without a spread ({source}).",
  "peers.sameAge": "Each end is compared with hitters of that age.",
  "sex.female": "girls and women",
  "sex.male": "boys and men",
  "break.bat-sensor": "From {day} on, another bat sensor was used: {to}.",
  "break.ball-screen": "From {day} on, another device measured the ball: {to}.",
  "break.device": "From {day} on, another device measured this: {to}.",
  "break.firmware": "From {day} on, the device ran other firmware: {to}.",
  "break.set-up": "From {day} on, the device was set up otherwise: {to}.",
  "break.game-bat": "From {day} on, another game bat was swung: {to}.",
  "break.why":
    "Values before and after such a day do not make one line, so no change is given; each stretch has an average of its own.",
  "break.bridge":
    "On {on}, old and new were used side by side ({swings}): the new set-up reads {offset} against the old one (95% range {low} to {high}).",
  "break.bridgeShort": "{to} from {day}, joined: {swings} seen by both, new − old {offset} ({low} to {high})",
  "break.joined":
    "Earlier values are shown as the newest set-up would have read them, and the range of the change is wider for it.",
  "break.stretch": "Stretch",
  "break.then": ", then ",
  "change.behind": "{swings} on {days}",
  "change.how":
    "How to read this: every figure is the average of a {of, select, sessions {session} other {training day}}, never a single best swing (the best of many rises with their number). “Start” and “end” are averages over the first and the last {of, select, sessions {sessions} other {training days}}.",

  // Measure by measure
  "measure.head": "Measure by measure",
  "measure.block": "{from} to {to}: {swings} on {days}",
  "measure.blockOneDay": "{from}: {swings} on {days}",
  "measure.of":
    "Of {swings} of this kind, {hit} were hit, {foul} fouled and {miss} missed; of {notKnown} the result is not known.",
  "measure.ofAllKnown": "Of {swings} of this kind, {hit} were hit, {foul} fouled and {miss} missed.",
  "measure.values": "All values, {of, select, sessions {session by session} other {day by day}}",
  "measure.alt":
    "Chart of {metric}, {condition}: one dot for each {of, select, sessions {session} other {training day}} from {from} to {to}. Start {first}, end {last}. The table below the chart holds every value.",
  "measure.altNoBlocks":
    "Chart of {metric}, {condition}: one dot for each {of, select, sessions {session} other {training day}} from {from} to {to}. The table below the chart holds every value.",
  "measure.captionDots": "Dots are {of, select, sessions {sessions} other {training days}}.",
  "measure.caption":
    "Dots are {of, select, sessions {sessions} other {training days}}, the bars are the averages of start and end.",
  "measure.captionBroken":
    "Dots are {of, select, sessions {sessions} other {training days}}. At the upright line the set-up changed; the bars are the averages before and after.",
  "measure.captionLine":
    "Dots are {of, select, sessions {sessions} other {training days}}, with the line through them; the bars are the averages of start and end.",
  "measure.axis": "{metric}, {unit}",
  "measure.goalMark": "goal {value}",
  "measure.goalWindow": "goal {low} to {high}",
  "measure.firstMark": "start {value}",
  "measure.lastMark": "end {value}",
  "measure.tableName": "{metric}, {condition}: values by {of, select, sessions {session} other {training day}}",
  "table.day": "Day",
  "table.session": "Session",
  "table.swings": "Swings",
  "table.mean": "Average",
  "table.sd": "Spread (SD)",
  "table.p90": "Top-tenth mark",
  "table.max": "Highest of the day",
  "table.scroll": "{name} (scrolls sideways)",

  // Other series
  "others.head": "Everything else that was measured",
  "others.intro": "These were not among the measures of the season; the values are given without a comparison.",
  "others.open": "Show them as a table",
  "others.what": "What",
  "others.how": "Set-up",
  "others.days": "{of, select, sessions {Sessions} other {Days}}",

  // Goals
  "compare.alt": "{metric}, start and end side by side. {rows}.",
  "compare.row": "{condition}: {first} at the start, {last} at the end",

  "goals.head": "Goals",
  "goals.target": "{metric}: {target} by {by}",
  "goals.window": "{metric} between {low} and {high}, on {share} of swings, by {by}",
  "goals.windowAny": "{metric} between {low} and {high} by {by}",
  "goals.atLeast": "{metric} of at least {low}, on {share} of swings, by {by}",
  "goals.atLeastAny": "{metric} of at least {low} by {by}",
  "goals.values": "Start {baseline}, latest {current}.",
  "goals.plausible": "The latest figure is plausibly {low} to {high}.",
  "goals.status.met-clear": "Met, and clearly so",
  "goals.status.met-unsure": "Met, not yet sure",
  "goals.status.on-course": "On course",
  "goals.status.behind": "Behind",
  "goals.status.cannot-tell": "Cannot tell yet",
  "goals.status.too-few": "Too few days to say",
  "goals.chance":
    "If the trend of these days held, the chance that one day then reaches the goal would be about {chance} in ten.",
  "goals.chanceLow": "If the trend of these days held, hardly any day then would reach the goal.",
  "goals.chanceHigh": "If the trend of these days held, nearly every day then would reach the goal.",
  "goals.zone": "{zone}, on {share} of balls, by {by}",
  "goals.replaced": "This was the goal until {day}, when it was set anew.",
  "goals.zoneOf": "A ball counts with {ranges}.",
  "goals.zoneRange": "{metric} {low} to {high}",
  "goals.zoneSpray": "direction {low} to {high}, pull side below zero",
  "goals.behind": "Start: {firstSwings} on {firstDays}. Latest: {lastSwings} on {lastDays}.",
  "goals.progress": "{share} of the way from start to goal",
  "goals.past": "At the goal or past it",
  "goals.back": "Further from the goal than at the start",
  "goals.already": "The start was already at this goal.",
  "goals.broken": "The set-up changed on {day}, so values before and after are not put on one scale.",
  "goals.noProgress":
    "There are not enough {of, select, sessions {sessions} other {training days}} to say how far along this goal is.",
  "goals.why": "Why: {why}",

  // Work
  "work.head": "Work, week by week",
  "work.total": "{swings} measured on {days}.",
  "work.unmeasured":
    "{n, plural, one {{figure} more swing was logged and not measured.} other {{figure} more swings were logged and not measured.}}",
  "work.alt":
    "Chart of measured swings in each week from {from} to {to}, by kind of practice. The busiest week had {busiest}. The table below the chart holds every value.",
  "work.axis": "Swings a week",
  "work.logged": "Logged, not measured",
  "work.away": "away",
  "work.awayList": "Away",
  "work.awayItem": "{from} to {to}",
  "work.values": "All weeks as a table",
  "work.week": "Week\u00a0of",
  "work.days": "Days",
  "work.kinds": "Of these",
  "work.none": "No practice is on file for this season.",

  // Notes
  "start.head": "Where we began",
  "start.priorities": "What we set out to work on",
  "notes.head": "Notes through the winter",
  "notes.kind.observation": "Observation",
  "notes.kind.plan-change": "Change of plan",
  "notes.kind.milestone": "Milestone",
  "notes.kind.words": "Note",
  "notes.about": "About {things}",
  "notes.byRole": "{author}, {role}",
  "words.head": "In the hitter’s own words",
  "closing.head": "To close the season",

  // Program
  "program.head": "Program to take along",
  "program.by": "Set up by {by} on {day}.",
  "program.byOnly": "Set up by {by}.",
  "program.on": "Set up on {day}.",
  "program.dose": "{sets} × {reps}",
  "program.rest": "Rest {rest}",
  "program.perWeek": "{n, plural, one {{figure} day a week} other {{figure} days a week}}",
  "program.where.home": "at home",
  "program.where.supervised": "only with a coach or an adult present",
  "program.cue": "Cue",
  "program.caution": "Take care",

  // Growth and bats
  "growth.head": "Height and game bats",
  "growth.height": "Height",
  "growth.mass": "Body mass",
  "growth.bats": "Game bat",
  "growth.from": "from {day}",
  "growth.growing":
    "At this age growth alone moves these measures. Where hitters of the same age are shown, compare with them too, not with the number alone.",
  "growth.note":
    "Growing and changing bats move these measures too; they are given here so that a change can be read beside them.",

  // How it was measured
  "how.head": "How it was measured",
  "how.devices": "Devices",
  "how.bats": "Bats",
  "how.balls": "Balls",
  "how.pitches": "Pitch speeds",
  "how.places": "Places",
  "how.pointOnBat": "read at {point}",
  "how.fromTo": "{from} to {to}",
  "how.until": "until {to}",
  "how.at.set": "as set on the machine",
  "how.at.release": "at release",
  "how.at.plate": "at the plate",
  "how.pitch": "{low} to {high}",
  "how.distance": "from {distance}",
  "how.unused": "(no counted swing)",
  "how.nothing": "No device, bat or ball is named in the files.",
  "device.bat-sensor": "bat sensor",
  "device.inertial": "sensor on the bat",
  "device.radar": "radar",
  "device.optical": "optical system",
  "device.camera": "camera",
  "device.light-gate": "light gate",
  "point.tip": "the tip of the bat",
  "point.sweet-spot": "the sweet spot",
  "role.game": "game bat",
  "role.overload": "heavy bat",
  "role.underload": "light bat",
  "role.short": "short bat",
  "role.long": "long bat",
  "role.training": "training bat",

  // What was counted
  "counted.head": "What was counted and what was not",
  "counted.sum": "{read} on file, {counted} of them counted.",
  "counted.zero": "No rows of this hitter are on file.",
  "counted.notCounted": "Read, and not counted",
  "counted.setAside": "Set aside, because it could not be read or cannot be true",
  "counted.explain": "A row is one record of a device. Nothing is dropped without a reason.",
  "reason.under-mark": "Swings under the speed mark set for full effort",
  "reason.no-speed-to-judge": "No bat speed, so full effort could not be judged",
  "reason.practice": "Practice swings",
  "reason.take": "Pitches not swung at",
  "reason.bunt": "Bunts",
  "reason.check": "Checked swings",
  "reason.no-swing": "No swing was made",
  "reason.technical": "Slow technical work",
  "reason.other-season": "From another season",
  "reason.unreadable-date": "The date could not be read",
  "reason.unreadable-number": "A number could not be read",
  "reason.unreadable-row": "The row could not be read",
  "reason.out-of-range": "The value cannot be true",
  "reason.unknown-athlete": "The athlete is not known",
  "reason.unknown-id": "A bat, ball or device is not known",
  "reason.ambiguous-name": "The name fits more than one athlete",
  "reason.duplicate": "The same swing twice",
  "reason.revised": "Replaced by a later export",
  "reason.void": "Struck out by the trainer",
  "reason.summary-row": "A sum or average, not a swing",
  "reason.unassigned-block": "Which block it belongs to is not known",
  "reason.future-date": "The date lies more than a year after the season",

  // Cautions and consent
  "care.head": "Please note",
  "care.pain":
    "Pain during or after swings is a reason to stop and to see a licensed health professional. This report does not diagnose.",
  "care.growth":
    "Children of one age differ in growth. Work should fit the child’s own stage, and signs of overuse should be taken seriously early.",
  "care.cage":
    "Wear a helmet, keep the operator behind a screen, and have an adult at the machine. Rules of your league and the law of your place come first.",
  "consent.head": "Who agreed to this report",
  "consent.guardian":
    "A guardian agreed on {day} that this report may be made and shared with the people who have its link.",
  "consent.self":
    "The hitter agreed on {day} that this report may be made and shared with the people who have its link.",
  "consent.keep":
    "The link is the key: whoever has it can read the report. Ask the trainer to replace it if it went to the wrong person.",

  // Club page
  "club.who": "Hitter",
  "club.record": "Measuring record",
  "club.measures": "Measures",
  "club.work": "Work, last weeks",
  "club.terms": "Terms",
  "club.charts": "Course of the season",
  "club.age": "Age",
  "club.bats": "Bats",
  "club.throws": "Throws",
  "club.positions": "Positions",
  "club.sport": "Sport and level",
  "club.height": "Height",
  "club.mass": "Body mass",
  "club.start": "Start",
  "club.end": "End",
  "club.change": "Change",
  "club.range": "95% range",
  "club.n": "Swings / {of, select, sessions {sessions} other {days}}",
  "club.verdict": "Verdict",
  "club.peers": "Peers",
  "club.percentileRange": "({low} to {high})",
  "club.notHolding": " †",
  "club.verdict.none": "none given",
  "club.verdict.clear-improvement": "improved, clearly",
  "club.verdict.improvement": "improved",
  "club.verdict.small-improvement": "improved a little",
  "club.verdict.same": "the same",
  "club.verdict.cannot-tell": "cannot tell",
  "club.verdict.small-decline": "declined a little",
  "club.verdict.decline": "declined",
  "club.verdict.clear-decline": "declined, clearly",
  "club.verdict.too-few": "too few",
  "club.verdict.not-a-measure": "not a measure",
  "club.noise.configured": "TE {value} (set)",
  "club.noise.test-days": "TE {value} (test days, {athletes} hitters)",
  "club.noise.own-lines": "TE {value} (own lines, {athletes} hitters)",
  "club.worth.configured": "SWC {value} (set)",
  "club.worth.season": "SWC {value} (season, {athletes} hitters)",
  "club.worth.reference": "SWC {value} (reference, {athletes} hitters)",
  "club.p": "p {p}",
  "club.pHolm": "Holm {p}",
  "club.sen": "TS {slope} per week ({low} to {high})",
  "club.senOnly": "TS {slope} per week",
  "club.mk": "MK p {p}",
  "club.lag1": "lag-1 {r}",
  "club.sdDays": "SD days {sd}",
  "club.sdSwings": "SD swings {sd}",
  "club.model": "{method}, df {df}",
  "club.method.session-line": "line through days",
  "club.method.mixed": "mixed model",
  "club.method.test-windows": "test windows",
  "club.method.two-tests": "two days",
  "club.measure": "Measure and set-up",
  "club.pooled": "pooled",
  "club.dash": "–",
  "club.range.value": "{low} to {high}",
  "club.nValue": "{swings} / {days}",
  "club.misses": "hit {hit}, foul {foul}, miss {miss}, not known {notKnown}",
  "club.term.block": "Start, end: mean of the session means in the first and last block of sessions.",
  "club.term.change": "Change: over the season, from a straight line through session means; range: its 95% interval.",
  "club.term.verdict":
    "Verdict: where the 95% interval lies against zero and SWC, the smallest worthwhile change (set by the trainer, or 0.2 of the SD between hitters); “the same” needs the 90% interval within ± SWC. † does not hold when all measures are counted (Holm).",
  "club.term.noise":
    "TE: typical error of one session’s mean; own lines: scatter of the group’s sessions about each hitter’s own line. SD days, SD swings: scatter between and within sessions.",
  "club.term.sen":
    "TS, MK: Theil–Sen slope and Mann–Kendall test on session means, the second look a verdict must pass. Lag-1: likeness of neighbouring sessions; p and range allow for it. df: degrees of freedom.",
  "club.term.peers":
    "Peers: percentile at start → end among hitters of the same sport, sex and level, measured the same way, with its 95% range.",
  "club.term.pooled": "Pooled: several set-ups taken together with fixed weights.",
  "club.term.mph": "mph: miles per hour; n: swings; SD: standard deviation.",
  "club.term.kmh": "km/h: kilometres per hour; n: swings; SD: standard deviation.",
  "club.noMeasures": "No measure of the season has values to show.",

  // How a verdict is reached
  "method.head": "How this was judged",
  "method.short":
    "A verdict needs more than a better number: the change has to stand out from how much days differ anyway, and it is held against the smallest change that matters.",
  "method.open": "How a verdict is reached, and what it cannot say",
  "method.unit":
    "Each day, or each named session of it, counts once. Swings of one day share the day (the sleep, the cold, the sensor), so many swings on few days prove little.",
  "method.line":
    "The change is read from a straight line through all the days, never from the first and the last. It is given with the range in which the true change plausibly lies, wider where neighbouring days are alike.",
  "method.twice":
    "Every line is looked at a second time in a way that single odd days hardly move. When the two do not agree, the answer is that we cannot tell.",
  "method.yardsticks":
    "Two yardsticks stand beside every change: how much one day differs from another without any change, and how large a change must be to matter. The trainer may set both; otherwise the second is a fifth of the spread among hitters of the same kind.",
  "method.words":
    "Improved or declined: the whole range lies on one side of no change. The same: the range lies within what would not matter, so we can tell. Cannot tell yet: anything else, which is a normal and honest answer.",
  "method.few":
    "With fewer than five days there is no verdict, and with fewer than ten it says so. About how many days would be needed is said where that can be known.",
  "method.tests":
    "Days of testing are kept apart from training and compared with each other alone, against how much test days of many hitters differ by chance.",
  "method.window":
    "Where the aim is a window, as for an angle, better means nearer to it: what is judged is how far outside the swings were on average.",
  "method.peers":
    "Others are hitters of the same sport, sex and level (or age), measured in the same way; where the set-up differs there is no comparison. No other hitter’s name or single value is on this page.",
  "method.goals":
    "A goal is clearly met when the whole range of the latest days is there, not when one day was. Start and end were fixed before anybody looked.",
  "method.best":
    "A best swing is no evidence: the more swings, the higher the best of them, with no improvement at all.",
  "method.cannot":
    "It cannot say why something changed, what will happen next, or whether it would have changed anyway: growth, a new bat and the calendar work too.",
  "method.rates":
    "How often it is wrong, measured on {seasons} simulated winters of each kind in which nothing changed: in the worst case about {independent} of a hundred hitters were called changed, about {alike} where neighbouring days are alike, and about {tests} of the noisiest among those judged by tests.",

  // Desk
  "desk.title": "Trainer’s desk · {name}",
  "desk.head": "Trainer’s desk",
  "desk.private": "Private. Never upload this folder.",
  "desk.athletes": "Athletes",
  "desk.none": "No athlete is on file yet.",
  "desk.athlete": "Athlete",
  "desk.verdicts": "Measures",
  "desk.counted": "Counted",
  "desk.notCounted": "Not counted",
  "desk.setAside": "Set aside",
  "desk.days": "Days",
  "desk.family": "Family page",
  "desk.club": "Club page",
  "desk.report": "Numbers",
  "desk.reportLink": "JSON",
  "desk.repsLink": "swings",
  "desk.notPublished": "not published",
  "desk.noLink": "no link",
  "desk.why.no-consent": "not published: no consent is on file",
  "desk.why.needs-guardian": "not published: a guardian has to agree",
  "desk.why.needs-own": "not published: the athlete has to agree",
  "desk.why.withdrawn": "not published: consent was withdrawn",
  "desk.why.not-covered": "not published: consent does not cover the numbers",
  "desk.why.ended": "not published: consent has run out",
  "desk.leftOut": "Left out of this build, because their own files could not be used: {list}.",
  "desk.ledger": "Every row accounted for",
  "desk.file": "File",
  "desk.read": "Read",
  "desk.total": "All files",
  "desk.balance": "Read = counted + not counted + set aside.",
  "desk.ledgerLink": "The full list is in {link}.",
  "desk.rowsHead": "What was not counted or set aside",
  "desk.reasonCount": "{reason}: {rows}",
  "desk.examples": "First rows: {reason}",
  "desk.place": "Place",
  "desk.column": "Field",
  "desk.value": "Value",
  "desk.noRows": "Every row that was read was counted.",
  "desk.problems": "To put right",
  "desk.noProblems": "Nothing to put right.",
  "desk.level.error": "must be put right",
  "desk.level.row": "row set aside",
  "desk.level.note": "worth knowing",
  "desk.rowProblems":
    "{n, plural, one {{figure} row set aside, with what to do} other {{figure} rows set aside, with what to do}}",
  "desk.farValues":
    "{n, plural, one {{figure} value that was counted and lies far from the athlete’s own swings} other {{figure} values that were counted and lie far from the athlete’s own swings}}",
  "desk.farValuesName": "Values far from the athlete’s own swings",
  "desk.rowProblemsName": "Rows set aside",
  "desk.rowProblemsMore": "Only the first are shown here.",
  "desk.problem": "Problem",
  "desk.remedy": "What to do",
  "desk.level": "Kind",
  "desk.linksLink": "All links are in {link}.",
} as const satisfies Record<string, string>;
