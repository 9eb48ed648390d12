/** What results and pages say, and groups, aisles and cautions of the starter foods, in German. */
export const notes: { readonly [british: string]: string } = {
  " and ": " und ",
  "1 day": "1 Tag",
  "1 more food is needed in another amount, and the same is bought":
    "von 1 weiteren Lebensmittel wird eine andere Menge gebraucht; eingekauft wird dasselbe",
  "1 more row not shown": "1 weitere Zeile nicht gezeigt",
  "1 portion": "1 Portion",
  "10 % more in it": "10 % mehr darin",
  "10 % more left of it": "10 % mehr davon erhalten",
  "10 % more of it": "10 % mehr davon",
  "100 g": "100 g",
  "14 g is what the United States' adequate intakes of fibre were reckoned from":
    "14 g liegen den US-amerikanischen Schätzwerten für Ballaststoffe zugrunde",
  "65 or over: losing weight can cost muscle and bone, and diets to that end are best left alone but where the weight itself does harm; older people may need more protein than the adult reference.":
    "Ab 65 Jahren: Abnehmen kann Muskeln und Knochen kosten; Reduktionsdiäten unterbleiben besser, außer wo das Gewicht selbst schadet. Ältere Menschen brauchen unter Umständen mehr Eiweiß als der Referenzwert für Erwachsene.",
  "800 kcal a day or less is a very-low-energy diet: only for a clinical need, nutritionally complete, for at most 12 weeks, with continuing clinical support.":
    "800 kcal am Tag oder weniger sind eine sehr niedrig kalorische Kost: nur bei klinischem Bedarf, mit vollständiger Nährstoffversorgung, höchstens 12 Wochen und unter fortlaufender klinischer Betreuung.",
  "?": "?",
  "?: not known": "?: nicht bekannt",
  "A blank is not a guarantee: foods are taken at what their data say, and a kitchen can carry traces over. Read the labels.":
    "Ein leeres Feld ist keine Gewähr: Lebensmittel gelten als das, was ihre Daten sagen, und in einer Küche können Spuren übertragen werden. Etiketten lesen.",
  "A body mass index below 16 is a high risk of refeeding problems, which can kill: after a time of eating little, food starts under clinical care at 10 kcal per kg a day or less, and at 5 kcal below an index of 14.":
    "Ein Body-Mass-Index unter 16 bedeutet ein hohes Risiko für ein Refeeding-Syndrom, das tödlich sein kann: Nach einer Zeit mit wenig Nahrung beginnt der Kostaufbau unter klinischer Betreuung mit höchstens 10 kcal je kg und Tag, bei einem Index unter 14 mit 5 kcal.",
  "A body mass index below 18.5 counts as underweight in adults.":
    "Ein Body-Mass-Index unter 18,5 gilt bei Erwachsenen als Untergewicht.",
  "A day on the mean": "Ein Tag im Mittel",
  "A day's reference": "Tagesreferenz",
  "A history of an eating disorder: counting energy and losing weight can bring it back; involve the treating team.":
    "Essstörung in der Vorgeschichte: Kalorienzählen und Abnehmen können sie zurückbringen; das Behandlungsteam einbeziehen.",
  "A level is of a whole day. Where none is published, no amount is proven safe.":
    "Eine Höchstmenge gilt für den ganzen Tag. Wo keine veröffentlicht ist, ist keine Menge als sicher belegt.",
  "A level is of a whole day: what else is eaten comes on top.":
    "Eine Höchstmenge gilt für den ganzen Tag: Was sonst gegessen wird, kommt hinzu.",
  "A physical activity level outside 1.40 to 2.40 is rarely kept up for long, and the estimate is less sure there.":
    "Eine körperliche Aktivität (PAL) außerhalb von 1,40 bis 2,40 wird selten lange durchgehalten, und die Schätzung ist dort weniger sicher.",
  ADI: "ADI",
  "ADI: acceptable daily intake, for every day of a life":
    "ADI: annehmbare Tagesdosis, für jeden Tag eines Lebens",
  AI: "AI",
  "AI: adequate intake, where no more exact figure could be set":
    "AI: angemessene Zufuhr, wo kein genauerer Wert festzulegen war",
  AMDR: "AMDR",
  "AMDR: acceptable range of intake, against chronic disease":
    "AMDR: annehmbare Zufuhrspanne, gegen chronische Krankheit",
  About: "Worum es geht",
  "Add when serving": "Beim Anrichten zugeben",
  Added: "Zugegeben",
  "Age: {age}": "Alter: {age}",
  "All meals": "Alle Mahlzeiten",
  Allergen: "Allergen",
  Allergens: "Allergene",
  "Allergens are not known of {list}: unknown is not free from":
    "Allergene nicht bekannt bei: {list}. Unbekannt heißt nicht frei davon",
  "Allergens: {list}": "Allergene: {list}",
  "Already in the cupboard": "Schon im Vorrat",
  "Amino acid": "Aminosäure",
  "Amino acids": "Aminosäuren",
  Amount: "Menge",
  "Amounts to measure": "Mengen zum Abmessen",
  "Amounts to measure, the best that was found": "Mengen zum Abmessen, die besten gefundenen",
  "Amounts to measure, the nearest to what was asked":
    "Mengen zum Abmessen, die dem Gewünschten am nächsten kommen",
  "As cooked": "Gegart",
  "As eaten": "Verzehrfertig",
  "As eaten, g": "Verzehrfertig, g",
  "As made": "Zubereitet",
  "As weighed in": "Eingewogen",
  "As weighed in, g": "Eingewogen, g",
  "Ask before serving whether any of {food} is of animal origin":
    "Vor dem Servieren klären, ob bei {food} etwas tierischen Ursprungs ist",
  "Ask before serving whether {food} holds: {list}":
    "Vor dem Servieren klären, ob {food} Folgendes enthält: {list}",
  Asked: "Gefordert",
  "At serving, each time": "Beim Anrichten, jedes Mal",
  "At this pace the body mass index falls below 18.5, which counts as underweight in adults, within 12 weeks.":
    "Bei diesem Tempo fällt der Body-Mass-Index binnen 12 Wochen unter 18,5, was bei Erwachsenen als Untergewicht gilt.",
  "Away.": "Nicht da.",
  Batch: "Ansatz",
  Before: "Vorher",
  "Before serving": "Vor dem Servieren",
  "Body mass: {mass}": "Körpergewicht: {mass}",
  "Bought otherwise than before": "Anders eingekauft als zuvor",
  Bound: "Grenze",
  "Brazil nuts are so rich in selenium that eating them often can pass the upper level of 255 µg a day for adults.":
    "Paranüsse sind so reich an Selen, dass häufiger Verzehr die Höchstmenge von 255 µg am Tag für Erwachsene überschreiten kann.",
  "Breastfeeding: equations for energy leave out what milk costs (EFSA: about 500 kcal a day in the first six months), which only an authority's reference intakes count in.":
    "Stillzeit: Energieformeln lassen aus, was die Milch kostet (EFSA: etwa 500 kcal am Tag in den ersten sechs Monaten); nur die Referenzwerte einer Fachgesellschaft oder Behörde rechnen es ein.",
  Brings: "Liefert",
  Buy: "Einkaufen",
  By: "Um",
  "By day and person: {components}": "Nach Tag und Person: {components}",
  "By mass": "Nach Gewicht",
  "By volume": "Nach Volumen",
  CDRR: "CDRR",
  "CDRR: intake above which eating less is expected to lower chronic disease; no level of harm":
    "CDRR: Zufuhr, über der weniger davon chronischer Krankheit vorbeugen soll; keine Schadensgrenze",
  Came: "Neu",
  Carbohydrates: "Kohlenhydrate",
  Carotenoids: "Carotinoide",
  Caution: "Hinweis",
  Cautions: "Hinweise",
  "Cautions about the person, where there are any, are not shown here: ask whoever planned this.":
    "Hinweise zur Person, soweit es welche gibt, stehen hier nicht: bei der planenden Stelle nachfragen.",
  "Cautions, person by person": "Hinweise, Person für Person",
  "Closest to the limit": "Der Höchstmenge am nächsten",
  "Coconut is not on the European list; the United States counted it as a tree nut until 2025. Ask people with a nut allergy; read the label for sulphites.":
    "Kokosnuss steht nicht auf der europäischen Liste; in den Vereinigten Staaten zählte sie bis 2025 zu den Schalenfrüchten. Menschen mit Nussallergie fragen; auf dem Etikett nach Sulfiten sehen.",
  "Coeliac disease: nothing is said of allergens in this food, and unknown is not free from gluten. Read the label.":
    "Zöliakie: Zu diesem Lebensmittel fehlen Allergenangaben, und unbekannt heißt nicht glutenfrei. Etikett lesen.",
  "Coeliac disease: of this food only oats that are labelled gluten-free, for others are mixed with wheat or barley on their way. A few people react to any oats; some countries advise against them. Ask the dietitian first.":
    "Zöliakie: von diesem Lebensmittel nur als glutenfrei gekennzeichneten Hafer, denn anderer wird unterwegs mit Weizen oder Gerste vermischt. Einzelne vertragen gar keinen Hafer; manche Länder raten davon ab. Zuerst die Ernährungsfachkraft fragen.",
  "Coeliac disease: the diet is to be strictly and lifelong free of gluten; a dietitian helps to keep it whole.":
    "Zöliakie: Die Kost ist lebenslang streng glutenfrei; eine Ernährungsfachkraft hilft, sie vollwertig zu halten.",
  "Coeliac disease: wheat, barley and rye hold gluten, and the diet is to be strictly free of it. None of this food, unless its label says gluten-free.":
    "Zöliakie: Weizen, Gerste und Roggen enthalten Gluten, und die Kost ist streng frei davon. Nichts von diesem Lebensmittel, außer das Etikett nennt es glutenfrei.",
  Column: "Spalte",
  Component: "Nährstoff",
  "Components that a source does not give were worked out from its other figures by {sources}.":
    "Nährstoffe, die eine Quelle nicht angibt, wurden aus ihren übrigen Werten berechnet nach {sources}.",
  "Composition was reckoned in exact fractions with steelyard {version} from 1 recipe as eaten.":
    "Die Zusammensetzung wurde in exakten Brüchen mit steelyard {version} aus 1 Rezept im verzehrfertigen Zustand berechnet.",
  "Composition was reckoned in exact fractions with steelyard {version} from {count} recipes as eaten.":
    "Die Zusammensetzung wurde in exakten Brüchen mit steelyard {version} aus {count} Rezepten im verzehrfertigen Zustand berechnet.",
  "Cooked for one person alone": "Nur für eine Person gekocht",
  "Cooked rice: cool it within an hour, keep it in the fridge for a day at most, heat it until steaming all through, and only once. Spores outlive the cooking, grow in warm rice, and leave a poison that heat does not undo.":
    "Gekochter Reis: binnen einer Stunde abkühlen, höchstens einen Tag im Kühlschrank aufbewahren, durch und durch dampfend heiß aufwärmen und nur einmal. Sporen überleben das Kochen, vermehren sich in warmem Reis und hinterlassen ein Gift, dem Hitze nichts anhat.",
  "Cooked ÷ raw mass of the line": "Gewicht gegart ÷ roh, dieser Zutat",
  "Cooked ÷ raw mass of what is cooked": "Gewicht gegart ÷ roh, des Gegarten",
  Cost: "Kosten",
  "Cranberry juice, and for caution other things made of cranberries, are advised against with warfarin: no safe amount could be named. Ask the clinic.":
    "Von Cranberrysaft und vorsorglich von anderen Cranberry-Erzeugnissen wird unter Warfarin abgeraten: Eine sichere Menge ließ sich nicht angeben. In der Praxis nachfragen.",
  DV: "DV",
  "DV: daily value for labels": "DV: Tageswert für Etiketten",
  Day: "Tag",
  Days: "Tage",
  Demand: "Vorgabe",
  "Diabetes: carbohydrate, meal times and weight loss are agreed person by person; on tablets that can bring glucose too low, eating less can need another dose.":
    "Diabetes: Kohlenhydrate, Essenszeiten und Abnehmen werden für jede Person abgesprochen; unter Tabletten, die den Blutzucker zu tief senken können, kann weniger Essen eine andere Dosis erfordern.",
  "Diabetes: how much carbohydrate a meal should bring, and when, is agreed person by person; sources rich in fibre that raise blood glucose slowly are preferred. On tablets that can bring glucose too low, less carbohydrate than usual can matter: ask the diabetes team.":
    "Diabetes: Wie viele Kohlenhydrate eine Mahlzeit wann liefern soll, wird für jede Person abgesprochen; bevorzugt werden ballaststoffreiche Quellen, die den Blutzucker langsam heben. Unter Tabletten, die den Blutzucker zu tief senken können, zählen auch weniger Kohlenhydrate als üblich: das Diabetesteam fragen.",
  Dish: "Gericht",
  "Each of {count} full runs": "Jeder von {count} vollen Durchgängen",
  "Each of {count} runs": "Jeder von {count} Durchgängen",
  Eaten: "Gegessen",
  "Eaten on": "Gegessen am",
  "Effect of rounding to kitchen measures": "Was das Runden auf Küchenmaße ausmacht",
  Energy: "Energie",
  "Energy by {system}": "Energie nach {system}",
  "Energy from:": "Energie aus:",
  "Energy is that of the sources, by {systems}.": "Die Energie ist die der Quellen, nach {systems}.",
  "Energy: {shares}": "Energie: {shares}",
  "European Union": "Europäische Union",
  Exactly: "Genau",
  "FAO 2013, child": "FAO 2013, Kind",
  "FAO 2013, infant": "FAO 2013, Säugling",
  "FAO 2013, older child, adolescent and adult": "FAO 2013, älteres Kind, Jugendliche und Erwachsene",
  "FAO/WHO 1991, preschool child": "FAO/WHO 1991, Vorschulkind",
  Factor: "Faktor",
  "Fatty acids": "Fettsäuren",
  Figure: "Wert",
  Figures: "Werte",
  "Figures of foods came from {sources}; the number of figures is given in brackets.":
    "Die Werte der Lebensmittel stammen aus {sources}; in Klammern steht die Zahl der Werte.",
  "Figures that no source gives and that were assumed to be zero: {count}.":
    "Werte, die keine Quelle angibt und die als null angenommen wurden: {count}.",
  "First make {mass} of": "Zuerst zubereiten: {mass}",
  "Fixed doses": "Feste Dosen",
  Food: "Lebensmittel",
  "Food and what is needed": "Lebensmittel und Bedarf",
  Foods: "Lebensmittel",
  "Foods are taken at what their data say, and a kitchen can carry traces over. Read the labels.":
    "Lebensmittel gelten als das, was ihre Daten sagen, und in einer Küche können Spuren übertragen werden. Etiketten lesen.",
  "Foods, what 100 g have": "Lebensmittel, Gehalt in 100 g",
  For: "Für",
  "For all": "Für alle",
  "For {person} alone: {lines}": "Nur für {person}: {lines}",
  "From the cupboard": "Aus dem Vorrat",
  "From the pot": "Aus dem Topf",
  "From the pot, {when}": "Aus dem Topf, {when}",
  "Furthest off": "Am weitesten daneben",
  "Gluten, but not said whether of wheat: {list}": "Gluten, aber ohne Angabe, ob von Weizen: {list}",
  "Goes into the pot: 1, added at serving: 0": "Kommt in den Topf: 1, beim Anrichten zugegeben: 0",
  "Grapefruit changes how the body handles some medicines, certain statins, calcium channel blockers and ciclosporin among them. Ask a pharmacist.":
    "Grapefruit verändert, wie der Körper manche Medikamente verarbeitet, darunter bestimmte Statine, Calciumkanalblocker und Ciclosporin. In der Apotheke fragen.",
  "Grapefruit is advised against with warfarin: ask the clinic.":
    "Von Grapefruit wird unter Warfarin abgeraten: in der Praxis nachfragen.",
  Group: "Gruppe",
  "Haemochromatosis: food with added iron and iron supplements are to be avoided, and red meat limited; no diet stands in for having blood taken.":
    "Hämochromatose: Lebensmittel mit Eisenzusatz und Eisenpräparate meiden, rotes Fleisch einschränken; keine Kost ersetzt den Aderlass.",
  "Haemochromatosis: little alcohol, and none where the liver is scarred.":
    "Hämochromatose: wenig Alkohol, bei vernarbter Leber keinen.",
  "Haemochromatosis: no added iron, little alcohol, no raw shellfish; no diet stands in for having blood taken, and a reference intake of iron is no goal here.":
    "Hämochromatose: kein Eisenzusatz, wenig Alkohol, keine rohen Schalentiere; keine Kost ersetzt den Aderlass, und der Referenzwert für Eisen ist hier kein Ziel.",
  "Haemochromatosis: no raw or half-cooked shellfish; Vibrio vulnificus in it can kill people with too much iron.":
    "Hämochromatose: keine rohen oder halbgaren Schalentiere; Vibrio vulnificus darin kann Menschen mit zu viel Eisen töten.",
  "Hatched: not known, there may be more.": "Schraffiert: nicht bekannt, es kann mehr sein.",
  "High blood pressure: keep salt low. Adults are advised to stay below 6 g in the whole day, from everything eaten. Salt made with potassium is no way out on some medicines: ask first.":
    "Bluthochdruck: Salz niedrig halten. Erwachsenen werden unter 6 g am ganzen Tag empfohlen, aus allem Gegessenen. Kaliumhaltiges Salz ist unter manchen Medikamenten kein Ausweg: erst fragen.",
  "High blood pressure: salt is to be kept low. Salt made with potassium is not for everyone on medicines: ask whoever prescribes them.":
    "Bluthochdruck: Salz niedrig halten. Kaliumhaltiges Salz ist unter Medikamenten nicht für alle geeignet: die verschreibende Stelle fragen.",
  "Holds it": "Enthält es",
  "Holds wheat and gluten. Other allergens (milk, soya, sesame and more) depend on the maker: read the label.":
    "Enthält Weizen und Gluten. Weitere Allergene (Milch, Soja, Sesam und andere) hängen vom Hersteller ab: Etikett lesen.",
  "How much": "Wie viel",
  Id: "Kennung",
  "In 1 g of protein": "In 1 g Eiweiß",
  "In 100 g": "In 100 g",
  "In all": "Insgesamt",
  "In pregnancy and while breastfeeding: no more than 200 mg of caffeine in the whole day.":
    "In Schwangerschaft und Stillzeit: höchstens 200 mg Koffein am ganzen Tag.",
  "In pregnancy, and when planning one, it is safest to have no alcohol at all; of what goes into this food, cooking may leave some.":
    "In der Schwangerschaft und bei Kinderwunsch ist es am sichersten, ganz auf Alkohol zu verzichten; von dem in diesem Lebensmittel kann nach dem Garen etwas bleiben.",
  "In pregnancy, where this egg would be eaten raw or soft: cook white and yolk until firm, unless the eggs come from a scheme against salmonella that local advice trusts (the UK's food safety authority names those it trusts, by the mark on the shell).":
    "In der Schwangerschaft, wo dieses Ei roh oder weich gegessen würde: Eiweiß und Eigelb fest garen, außer die Eier stammen aus einem Programm gegen Salmonellen, dem die örtlichen Empfehlungen vertrauen (die britische Lebensmittelbehörde nennt solche nach dem Stempel auf der Schale).",
  "In pregnancy, where this meat would be eaten raw or pink: cook it until no pink and no blood are left, for toxoplasma and salmonella.":
    "In der Schwangerschaft, wo dieses Fleisch roh oder rosa gegessen würde: garen, bis weder Rosa noch Blut bleibt, wegen Toxoplasmen und Salmonellen.",
  "In pregnancy, while breastfeeding and for children: brown seaweed at most once a week.":
    "In Schwangerschaft und Stillzeit und für Kinder: Braunalgen höchstens einmal in der Woche.",
  "In pregnancy: cold-smoked or cured fish only when cooked until steaming hot, for it can carry listeria. Local advice comes first.":
    "In der Schwangerschaft: kalt geräucherten oder gebeizten Fisch nur dampfend heiß gegart, denn er kann Listerien enthalten. Örtliche Empfehlungen gehen vor.",
  "In pregnancy: meat that was cured and not cooked can carry toxoplasma. It is safest cooked; local advice comes first.":
    "In der Schwangerschaft: Gepökeltes, nicht gegartes Fleisch kann Toxoplasmen enthalten. Gegart ist es am sichersten; örtliche Empfehlungen gehen vor.",
  "In pregnancy: no pâté of any kind, made of vegetables either, for it can carry listeria.":
    "In der Schwangerschaft: keine Pastete gleich welcher Art, auch keine aus Gemüse, denn sie kann Listerien enthalten.",
  "In pregnancy: none of this food, unless cooked until steaming hot. Soft mould-ripened or soft blue cheese, and what is made of unpasteurised milk, can carry listeria. Local advice comes first.":
    "In der Schwangerschaft: nichts von diesem Lebensmittel, außer dampfend heiß gegart. Weichkäse mit Schimmelrinde, weicher Blauschimmelkäse und Erzeugnisse aus Rohmilch können Listerien enthalten. Örtliche Empfehlungen gehen vor.",
  "In pregnancy: sprouted seeds and beans only when cooked until steaming hot; raw they can carry salmonella, E. coli and listeria.":
    "In der Schwangerschaft: Sprossen und Keimlinge nur dampfend heiß gegart; roh können sie Salmonellen, E. coli und Listerien enthalten.",
  "In stock": "Vorrat",
  "In the pot": "Im Topf",
  "Institute of Medicine 2002": "Institute of Medicine 2002",
  "Insulin is matched to carbohydrate: a portion of another size, or another mix, changes the dose. Agree it with the diabetes team.":
    "Insulin wird auf die Kohlenhydrate abgestimmt: Eine andere Portionsgröße oder Mischung ändert die Dosis. Mit dem Diabetesteam absprechen.",
  "Insulin: a change in carbohydrate or in meal sizes changes the dose needed; agree it with the diabetes team first.":
    "Insulin: Ändern sich Kohlenhydrate oder Mahlzeitengröße, ändert sich die nötige Dosis; zuerst mit dem Diabetesteam absprechen.",
  "Kidney disease: how much of these is right is set by the kidney team, often below what is usual.":
    "Nierenkrankheit: Wie viel hiervon richtig ist, legt das Nierenteam fest, oft unter dem Üblichen.",
  "Kidney disease: protein, potassium, phosphorus and sodium are set by the kidney team, often below the amounts used here.":
    "Nierenkrankheit: Eiweiß, Kalium, Phosphor und Natrium legt das Nierenteam fest, oft unter den hier verwendeten Mengen.",
  Kitchen: "Küche",
  Least: "Mindestens",
  "Left for serving: {lines}": "Erst beim Anrichten: {lines}",
  "Left over": "Übrig",
  "Less protein than the reference intake for this age and state (0.83 g per kg of body mass a day for adults).":
    "Weniger Eiweiß als der Referenzwert für dieses Alter und diesen Zustand (0,83 g je kg Körpergewicht und Tag für Erwachsene).",
  "Less than 30 kcal for each kg of fat-free mass, even before what exercise takes is taken off: low energy availability, which can harm hormones, bones and performance, in men too. The threshold was found in young women, and people differ.":
    "Weniger als 30 kcal je kg fettfreier Masse, noch bevor der Verbrauch durch Sport abgezogen ist: eine niedrige Energieverfügbarkeit, die Hormonen, Knochen und Leistung schaden kann, auch bei Männern. Der Schwellenwert wurde bei jungen Frauen gefunden, und Menschen unterscheiden sich.",
  "Levothyroxine: soya, and food rich in calcium, iron or fibre, hinder its uptake when eaten near the tablet; tell whoever checks the dose of a change in them.":
    "Levothyroxin: Soja sowie Speisen mit viel Calcium, Eisen oder Ballaststoffen hemmen die Aufnahme, wenn sie nahe an der Tablette gegessen werden; wer die Dosis prüft, soll von einer Änderung wissen.",
  Licence: "Lizenz",
  Limit: "Grenze",
  Line: "Zutat",
  "Line by line": "Zutat für Zutat",
  "Lithium: keep salt, drink and caffeine steady. Less salt, a diet to lose weight or a loss of fluid can make lithium poisonous: ask whoever prescribes it first.":
    "Lithium: Salz, Trinkmenge und Koffein gleichmäßig halten. Weniger Salz, eine Reduktionsdiät oder Flüssigkeitsverlust können Lithium giftig werden lassen: zuerst die verschreibende Stelle fragen.",
  "Liver is very rich in vitamin A. Not in pregnancy nor when planning one; anyone else at most once a week.":
    "Leber ist sehr reich an Vitamin A. Nicht in der Schwangerschaft und nicht bei Kinderwunsch; sonst höchstens einmal in der Woche.",
  "MAO inhibitors: aged cheese, cured meat, pickled fish, yeast and meat extracts, fermented soya, beer and wine can drive blood pressure up dangerously; eat only fresh food.":
    "MAO-Hemmer: Gereifter Käse, gepökeltes Fleisch, eingelegter Fisch, Hefe- und Fleischextrakt, fermentierte Soja, Bier und Wein können den Blutdruck gefährlich steigern; nur Frisches essen.",
  "Made first": "Zuerst zubereitet",
  Marks: "Kennzeichen",
  Mass: "Gewicht",
  Meal: "Mahlzeit",
  Meals: "Mahlzeiten",
  "Mean requirement of a day": "Mittlerer Tagesbedarf",
  Measure: "Abmessen",
  Measured: "Abgemessen",
  "Milk, eggs and honey are of animal origin. Fining agents and carriers of added vitamins are told by no table: the label or the maker has the last word.":
    "Milch, Eier und Honig sind tierischen Ursprungs. Klärmittel und Trägerstoffe zugesetzter Vitamine nennt keine Tabelle: Das letzte Wort hat das Etikett oder der Hersteller.",
  Minerals: "Mineralstoffe",
  Missed: "Verfehlt",
  "More than 0.5 % of body mass a week is faster than people who train to gain muscle are advised to aim for (0.25 to 0.5 %); what comes on beyond that is mostly fat.":
    "Mehr als 0,5 % des Körpergewichts je Woche ist schneller, als Trainierenden zum Muskelaufbau empfohlen wird (0,25 bis 0,5 %); was darüber hinaus zukommt, ist meist Fett.",
  "More than 1 % of body mass a week is faster than people who train are advised to lose (0.5 to 1 %), so as to keep their lean mass.":
    "Mehr als 1 % des Körpergewichts je Woche ist schneller, als Trainierenden empfohlen wird (0,5 bis 1 %), wenn die fettfreie Masse erhalten bleiben soll.",
  "More than 1 kg a week is faster than weight-loss programmes are advised to aim for (0.5 to 1 kg at most).":
    "Mehr als 1 kg je Woche ist schneller, als Programme zum Abnehmen anstreben sollen (höchstens 0,5 bis 1 kg).",
  "More than 2.0 g of protein per kg of body mass a day: above the range given for people in training (1.4 to 2.0), and above twice the reference intake.":
    "Mehr als 2,0 g Eiweiß je kg Körpergewicht und Tag: über der Spanne für Trainierende (1,4 bis 2,0) und über dem Doppelten des Referenzwerts.",
  "More than 2.5 times the energy of complete rest: more than people were found able to take up day after day.":
    "Mehr als das 2,5-Fache der Energie bei völliger Ruhe: mehr, als Menschen Tag für Tag aufnehmen konnten.",
  Most: "Höchstens",
  "Most ground cinnamon is cassia, whose coumarin can harm the liver of sensitive people. How much is too much goes by body mass, 0.1 mg of coumarin a day for each kilogram: at the usual content about 0.5 g of cassia for a child of 15 kilograms and 2 g for an adult of 60. For daily use take Ceylon cinnamon, or little; with liver disease ask a doctor first.":
    "Gemahlener Zimt ist meist Cassia, deren Cumarin der Leber empfindlicher Menschen schaden kann. Wie viel zu viel ist, richtet sich nach dem Körpergewicht, 0,1 mg Cumarin am Tag je Kilogramm: beim üblichen Gehalt etwa 0,5 g Cassia für ein Kind von 15 Kilogramm und 2 g für Erwachsene mit 60. Für den täglichen Gebrauch Ceylon-Zimt nehmen oder wenig; bei Leberkrankheit erst ärztlich fragen.",
  Moved: "Verschoben",
  NRV: "NRV",
  "NRV-NCD": "NRV-NCD",
  "NRV-NCD: nutrient reference value for labels, set from risk of disease":
    "NRV-NCD: Nährstoffbezugswert für Etiketten, nach Krankheitsrisiko",
  "NRV-R": "NRV-R",
  "NRV-R: nutrient reference value for labels, set from requirements":
    "NRV-R: Nährstoffbezugswert für Etiketten, nach Bedarf",
  "NRV: nutrient reference value for labels": "NRV: Nährstoffbezugswert für Etiketten",
  "Near this age the equation, or its figures, change in one step: the need is less sure than one number tells.":
    "Nahe diesem Alter ändern sich die Formel oder ihre Werte in einem Schritt: Der Bedarf ist weniger sicher, als eine einzelne Zahl sagt.",
  Nearest: "Nächstliegend",
  Needed: "Gebraucht",
  "No figure was missing.": "Kein Wert fehlte.",
  "No honey for a child under 12 months, not even in cooking: it can carry spores that cause infant botulism.":
    "Kein Honig für Kinder unter 12 Monaten, auch nicht gegart: Er kann Sporen enthalten, die Säuglingsbotulismus auslösen.",
  "No liver, and nothing made of it, in pregnancy or when planning one: too much vitamin A harms the unborn child.":
    "In der Schwangerschaft und bei Kinderwunsch keine Leber und nichts daraus: Zu viel Vitamin A schadet dem ungeborenen Kind.",
  "No whole nuts under 5 years, for a child can choke on them: ground, crushed or as a smooth butter.":
    "Keine ganzen Nüsse unter 5 Jahren, denn ein Kind kann daran ersticken: gemahlen, zerstoßen oder als glattes Mus.",
  "None of this fish in pregnancy, when planning one, or under 16: it is high in mercury. Which fish are named differs by country; local advice comes first.":
    "Nichts von diesem Fisch in der Schwangerschaft, bei Kinderwunsch oder unter 16 Jahren: Er enthält viel Quecksilber. Welche Fische gemeint sind, ist von Land zu Land verschieden; örtliche Empfehlungen gehen vor.",
  "Nordic countries": "Nordische Länder",
  "Nori is a red seaweed, far lower in iodine than kelp, but a sheet (about 3 g dry) can still bring 100 µg, and batches differ. While pregnant or breastfeeding, with thyroid, heart or kidney disease, or on medicines with iodine or lithium, ask a doctor first.":
    "Nori ist eine Rotalge mit weit weniger Iod als Kelp, doch ein Blatt (etwa 3 g trocken) kann immer noch 100 µg liefern, und Chargen sind verschieden. In Schwangerschaft und Stillzeit, bei Schilddrüsen-, Herz- oder Nierenkrankheit oder unter Medikamenten mit Iod oder Lithium erst ärztlich fragen.",
  "Not known": "Nicht bekannt",
  "Not named in the method: {lines}": "In der Zubereitung nicht genannt: {lines}",
  "Not to be served: {list}": "Nicht servieren: {list}",
  Note: "Anmerkung",
  Notes: "Anmerkungen",
  "Nothing is served, since what must hold cannot.":
    "Es wird nichts serviert, da das Verbindliche nicht einzuhalten ist.",
  "Nothing was known of {names}.": "Nichts war bekannt über {names}.",
  Now: "Jetzt",
  "Nutmeg is for pinches: from about 5 g (two teaspoons) it has poisoned people, with racing heart, confusion and hallucinations. Keep it from children.":
    "Muskatnuss gehört prisenweise hinein: Ab etwa 5 g (zwei Teelöffeln) hat sie Menschen vergiftet, mit Herzrasen, Verwirrtheit und Halluzinationen. Von Kindern fernhalten.",
  Nutrient: "Nährstoff",
  "Nutrients a day, mean of {days} days": "Nährstoffe am Tag, Mittel aus {days} Tagen",
  "Nutrients of all these portions": "Nährstoffe aller dieser Portionen",
  "Nutrients of this portion": "Nährstoffe dieser Portion",
  Of: "Von",
  "Of WHO and FAO some minerals, vitamins of children under 7, and goals for populations are here: that nothing is said of protein, energy or other vitamins does not mean that nothing is recommended.":
    "Von WHO und FAO stehen hier einige Mineralstoffe, Vitamine für Kinder unter 7 Jahren und Ziele für Bevölkerungen: Dass zu Eiweiß, Energie oder anderen Vitaminen nichts steht, heißt nicht, dass nichts empfohlen wird.",
  "Of alpha-tocopherol equivalents the alpha-tocopherol alone is counted: there is at least that.":
    "Von den Alpha-Tocopherol-Äquivalenten zählt nur das Alpha-Tocopherol: Es ist mindestens so viel.",
  "Of that in the pot, g": "Davon im Topf, g",
  "Of the Nordic countries only calcium, folate, iodine, magnesium, potassium, selenium, zinc and vitamins D and E are here: that nothing is said of protein, iron, sodium or other vitamins does not mean that nothing is recommended.":
    "Von den nordischen Ländern stehen hier nur Calcium, Folat, Iod, Magnesium, Kalium, Selen, Zink und die Vitamine D und E: Dass zu Eiweiß, Eisen, Natrium oder anderen Vitaminen nichts steht, heißt nicht, dass nichts empfohlen wird.",
  "Of the pot": "Vom Topf",
  "Of these figures, borrowed from another food: {borrowed}; calculated by their source: {calculated}.":
    "Von diesen Werten von einem anderen Lebensmittel entlehnt: {borrowed}; von ihrer Quelle berechnet: {calculated}.",
  "Of this food, in pregnancy and when planning one: no more than four medium cans of tuna (140 g drained each) or two steaks (140 g cooked) a week, for its mercury. Local advice comes first.":
    "Von diesem Lebensmittel in der Schwangerschaft und bei Kinderwunsch höchstens vier mittelgroße Dosen Thunfisch (je 140 g abgetropft) oder zwei Steaks (je 140 g gegart) in der Woche, wegen des Quecksilbers. Örtliche Empfehlungen gehen vor.",
  "Of this food, in pregnancy and while breastfeeding: oily fish is good to have, but no more than two portions (140 g cooked each) a week, for the pollutants it gathers. Local advice comes first.":
    "Von diesem Lebensmittel in Schwangerschaft und Stillzeit: Fettreicher Fisch ist gut, aber höchstens zwei Portionen (je 140 g gegart) in der Woche, wegen der Schadstoffe, die er anreichert. Örtliche Empfehlungen gehen vor.",
  "Off by": "Abweichung",
  "On MAO inhibitors: food that was aged, cured, fermented or concentrated, and beer and wine, can hold tyramine that drives blood pressure up dangerously; broad bean pods hold dopa. Leave it out unless the prescriber says otherwise, and for two to three weeks after the medicine is stopped. Only fresh food.":
    "Unter MAO-Hemmern: Gereifte, gepökelte, fermentierte oder eingedickte Lebensmittel sowie Bier und Wein können Tyramin enthalten, das den Blutdruck gefährlich steigert; Schoten von Ackerbohnen enthalten Dopa. Weglassen, sofern die verschreibende Stelle nichts anderes sagt, auch noch zwei bis drei Wochen nach dem Absetzen. Nur Frisches.",
  "On lithium, salt and drink are to stay much the same from day to day: with less salt than usual lithium can rise to a poisonous level, with more it falls.":
    "Unter Lithium sollen Salz und Trinkmenge von Tag zu Tag gleich bleiben: Mit weniger Salz als üblich kann Lithium auf giftige Werte steigen, mit mehr fällt es.",
  "On warfarin, keep vitamin K much the same from week to week: no sudden change in leafy greens without telling the clinic.":
    "Unter Warfarin Vitamin K von Woche zu Woche etwa gleich halten: keine plötzliche Änderung bei grünem Blattgemüse, ohne der Praxis Bescheid zu geben.",
  "On warfarin, vitamin K should stay much the same from week to week. Tell the clinic before this becomes a habit, or stops being one.":
    "Unter Warfarin soll Vitamin K von Woche zu Woche etwa gleich bleiben. Der Praxis Bescheid geben, bevor dies zur Gewohnheit wird oder aufhört, eine zu sein.",
  "One portion": "Eine Portion",
  "One portion, g": "Eine Portion, g",
  Other: "Sonstiges",
  "Out of reach: limits that no measurable amounts keep":
    "Nicht erreichbar: Grenzen, die keine abmessbaren Mengen einhalten",
  PRI: "PRI",
  "PRI: population reference intake, enough for nearly everyone":
    "PRI: Referenzzufuhr der Bevölkerung, genug für fast alle",
  Page: "Seite",
  People: "Personen",
  "Per portion": "Je Portion",
  Person: "Person",
  "Phenylketonuria: aspartame (E 951) is a source of phenylalanine, and its label has to say so. None, unless the metabolic team says otherwise.":
    "Phenylketonurie: Aspartam (E 951) ist eine Phenylalaninquelle, und das Etikett muss es sagen. Nichts davon, sofern das Stoffwechselteam nichts anderes sagt.",
  "Phenylketonuria: how much phenylalanine a day may hold is set by the metabolic team, and each portion counts; where it is not known, a gram of protein is counted as about 50 mg.":
    "Phenylketonurie: Wie viel Phenylalanin ein Tag enthalten darf, legt das Stoffwechselteam fest, und jede Portion zählt; wo es nicht bekannt ist, wird ein Gramm Eiweiß mit etwa 50 mg gerechnet.",
  "Phenylketonuria: protein and phenylalanine are set by the metabolic team, far below the amounts used here.":
    "Phenylketonurie: Eiweiß und Phenylalanin legt das Stoffwechselteam fest, weit unter den hier verwendeten Mengen.",
  Portion: "Portion",
  Portions: "Portionen",
  "Portions met": "Portionen im Ziel",
  Pot: "Topf",
  Pots: "Töpfe",
  "Pregnant: equations for energy leave out what pregnancy adds (EFSA: 70, 260 and 500 kcal a day by trimester), which only an authority's reference intakes count in. Weight-loss diets are not advised; a midwife or dietitian sets the target.":
    "Schwangerschaft: Energieformeln lassen aus, was die Schwangerschaft hinzufügt (EFSA: 70, 260 und 500 kcal am Tag je Trimester); nur die Referenzwerte einer Fachgesellschaft oder Behörde rechnen es ein. Von Reduktionsdiäten wird abgeraten; Hebamme oder Ernährungsfachkraft legt das Ziel fest.",
  Price: "Preis",
  "Protein brings a share of energy outside the range set for this age (10 to 35 % for adults).":
    "Der Eiweißanteil an der Energie liegt außerhalb der Spanne für dieses Alter (10 bis 35 % für Erwachsene).",
  "Protein, fat and carbohydrate as asked do not come to the day's energy by general factors (4, 9 and 4 kcal per g): only foods whose own factors differ can meet them together.":
    "Eiweiß, Fett und Kohlenhydrate ergeben so, wie sie gefordert sind, nach allgemeinen Faktoren (4, 9 und 4 kcal je g) nicht die Tagesenergie: Nur Lebensmittel mit anderen eigenen Faktoren können alles zugleich treffen.",
  Proximates: "Hauptbestandteile",
  "Published for a day": "Für einen Tag veröffentlicht",
  RDA: "RDA",
  "RDA: recommended dietary allowance, enough for nearly everyone":
    "RDA: empfohlene Zufuhr, genug für fast alle",
  RI: "RI",
  "RI: recommended intake, enough for nearly everyone": "RI: empfohlene Zufuhr, genug für fast alle",
  RNI: "RNI",
  "RNI: reference nutrient intake, enough for nearly everyone": "RNI: Referenzzufuhr, genug für fast alle",
  Ratios: "Verhältnisse",
  "Raw or half-cooked common beans, red kidney beans above all, make people ill. Soak for at least 5 hours, throw that water away, then boil in fresh water for at least 30 minutes; a slow cooker alone does not get hot enough.":
    "Rohe oder halbgare Gartenbohnen, vor allem rote Kidneybohnen, machen krank. Mindestens 5 Stunden einweichen, das Wasser weggießen, dann in frischem Wasser mindestens 30 Minuten sprudelnd kochen; ein Schongarer allein wird nicht heiß genug.",
  Recipe: "Rezept",
  "References are averages of many days, for healthy people: no portion has to meet them.":
    "Referenzwerte sind Mittel vieler Tage, für Gesunde: Keine einzelne Portion muss sie erreichen.",
  Release: "Ausgabe",
  Remaining: "Bleibt",
  "Rich in oxalate: people who were told to limit it, after kidney stones for one, should ask their clinician.":
    "Reich an Oxalat: Wer es einschränken soll, etwa nach Nierensteinen, fragt ärztlich nach.",
  Row: "Zeile",
  Runs: "Durchgänge",
  SUL: "SUL",
  "SUL: safe upper level": "SUL: sichere Höchstmenge",
  "Salt made with potassium is not to be used with kidney disease or diabetes, in pregnancy, by older people, or on some medicines for blood pressure (ACE inhibitors, angiotensin receptor blockers): ask a doctor or pharmacist first.":
    "Kaliumhaltiges Salz ist bei Nierenkrankheit oder Diabetes, in der Schwangerschaft, im Alter oder unter manchen Blutdruckmitteln (ACE-Hemmern, Angiotensin-Rezeptorblockern) nicht zu verwenden: erst ärztlich oder in der Apotheke fragen.",
  Scaling: "Skalierung",
  "Seaweed can hold more iodine in a spoonful than the safe limit for a day, and how much varies from one batch to the next. In pregnancy, while breastfeeding and for children: brown seaweed at most once a week. With thyroid, heart or kidney disease, or on medicines with iodine or lithium, ask a clinician first.":
    "Meeresalgen können in einem Löffel mehr Iod enthalten, als für einen Tag sicher ist, und wie viel, schwankt von Charge zu Charge. In Schwangerschaft und Stillzeit und für Kinder: Braunalgen höchstens einmal in der Woche. Bei Schilddrüsen-, Herz- oder Nierenkrankheit oder unter Medikamenten mit Iod oder Lithium erst ärztlich fragen.",
  "Seaweed is advised against with thyroid, heart or kidney disease, or on medicines with iodine or lithium, unless a doctor says otherwise.":
    "Von Meeresalgen wird bei Schilddrüsen-, Herz- oder Nierenkrankheit und unter Medikamenten mit Iod oder Lithium abgeraten, sofern ärztlich nichts anderes gesagt wird.",
  "Served otherwise": "Anders serviert",
  Share: "Anteil",
  "Share of a day": "Anteil am Tag",
  "Share of it": "Anteil daran",
  "Share of the energy": "Energieanteil",
  "Share of the variance": "Anteil an der Varianz",
  "Shopping list": "Einkaufsliste",
  "Shopping list, {day}": "Einkaufsliste, {day}",
  "Shopping list, {day}: for {first}": "Einkaufsliste, {day}: für {first}",
  "Shopping list, {day}: for {first} to {last}": "Einkaufsliste, {day}: für {first} bis {last}",
  Source: "Quelle",
  Sources: "Quellen",
  "Soya hinders the uptake of levothyroxine: leave as long a time as can be between the tablet and soya, keep the amount steady, and tell whoever checks the dose.":
    "Soja hemmt die Aufnahme von Levothyroxin: möglichst viel Zeit zwischen Tablette und Soja lassen, die Menge gleich halten und der Stelle Bescheid geben, die die Dosis prüft.",
  State: "Zustand",
  Step: "Schritt",
  TDI: "TDI",
  "TDI: tolerable daily intake, for every day of a life":
    "TDI: duldbare Tagesdosis, für jeden Tag eines Lebens",
  Table: "Tabelle",
  Take: "Nehmen",
  "Take care": "Bitte beachten",
  "The broken line marks the upper level, where it lies near.":
    "Die gestrichelte Linie zeigt die Höchstmenge, wo sie in der Nähe liegt.",
  "The full run": "Der volle Durchgang",
  "The line marks a whole day.": "Die Linie zeigt einen ganzen Tag.",
  "The mass as eaten was {how}; a change of mass was taken to be water.":
    "Das verzehrfertige Gewicht wurde {how}; eine Gewichtsänderung galt als Wasser.",
  "The rest": "Der Rest",
  Then: "Dann",
  "These are calculations from published tables, not advice: a licensed practitioner decides what a person should eat.":
    "Dies sind Berechnungen aus veröffentlichten Tabellen, keine Beratung: Was eine Person essen soll, entscheidet eine zugelassene Fachkraft.",
  "These cannot stand together in one day: {demands}.":
    "Diese Vorgaben sind an einem Tag nicht vereinbar: {demands}.",
  "These cannot stand together in one day: {demands}; and {count} more.":
    "Diese Vorgaben sind an einem Tag nicht vereinbar: {demands}; und {count} weitere.",
  "This is less energy than the body is reckoned to use at complete rest.":
    "Das ist weniger Energie, als der Körper bei völliger Ruhe rechnerisch verbraucht.",
  "This person's age lies outside that of the people the equation was made from.":
    "Das Alter dieser Person liegt außerhalb dessen der Menschen, aus denen die Formel gewonnen wurde.",
  "Thyroid disease: one serving of seaweed can bring several days' worth of iodine; leave seaweed out unless a doctor says otherwise.":
    "Schilddrüsenkrankheit: Eine Portion Meeresalgen kann Iod für mehrere Tage liefern; Algen weglassen, sofern ärztlich nichts anderes gesagt wird.",
  Times: "Wie oft",
  "To buy": "Einzukaufen",
  "To buy, and its price": "Einzukaufen, mit Preis",
  "To cook": "Zu kochen",
  "To cook: {day}": "Zu kochen: {day}",
  "To decide": "Zu entscheiden",
  Total: "Summe",
  "Totals are lower bounds, since some ingredients say nothing of them, for {names}.":
    "Summen sind Untergrenzen, da manche Zutaten nichts dazu angeben, bei {names}.",
  UL: "UL",
  "UL: tolerable upper intake level": "UL: tolerierbare Höchstmenge",
  "Under 18 it is healthiest to have no alcohol, and before 15 none at all; of what goes into this food, cooking may leave some.":
    "Unter 18 Jahren ist gar kein Alkohol am gesündesten, vor 15 keinesfalls; von dem in diesem Lebensmittel kann nach dem Garen etwas bleiben.",
  "Under 18: growth needs energy and protein of its own, and adult equations and targets do not fit.":
    "Unter 18 Jahren: Wachstum braucht eigene Energie und eigenes Eiweiß; Formeln und Ziele für Erwachsene passen nicht.",
  Unit: "Einheit",
  "United Kingdom": "Vereinigtes Königreich",
  "United States and Canada": "Vereinigte Staaten und Kanada",
  "Upper level": "Höchstmenge",
  "Upper levels": "Höchstmengen",
  Use: "Verbrauch",
  Value: "Wert",
  Vitamins: "Vitamine",
  "WHO and FAO": "WHO und FAO",
  "WHO/FAO/UNU 2007": "WHO/FAO/UNU 2007",
  "Warfarin: keep vitamin K steady from week to week, and tell the clinic before changing how much leafy green food is eaten.":
    "Warfarin: Vitamin K von Woche zu Woche gleichmäßig halten und der Praxis Bescheid geben, bevor sich die Menge grünen Blattgemüses ändert.",
  "Weighed out for each person: {lines}": "Für jede Person abgewogen: {lines}",
  Went: "Entfallen",
  What: "Was",
  "What a portion brings, as eaten": "Was eine Portion verzehrfertig liefert",
  "What came and what went": "Was neu ist und was entfallen ist",
  "What cooking leaves of components was reckoned line by line by {sources}.":
    "Was vom Gehalt nach dem Garen bleibt, wurde Zutat für Zutat berechnet nach {sources}.",
  "What cooking takes of its constituents was taken off it by the same factors.":
    "Was das Garen von den Bestandteilen nimmt, wurde mit denselben Faktoren abgezogen.",
  "What goes in": "Was hineinkommt",
  "What is cooked": "Was gekocht wird",
  "What is not met": "Was nicht erfüllt ist",
  "What is served, each time": "Was jedes Mal serviert wird",
  "What it holds of allergens depends on the maker or the method: read the label.":
    "Welche Allergene enthalten sind, hängt vom Hersteller oder Verfahren ab: Etikett lesen.",
  "What people avoid": "Was gemieden wird",
  "What portions cost": "Was Portionen kosten",
  "What to check": "Was zu prüfen ist",
  "What to do": "Was zu tun ist",
  When: "Wann",
  "Where it comes from": "Woher es kommt",
  "Where it stands": "Wo es steht",
  "Where someone's authority has no level at their age, another's stands in and is named: a help for whoever is asked, and no leave to serve up to it.":
    "Wo die gewählte Fachstelle für ein Alter keine Höchstmenge hat, steht die einer anderen, mit Namen: eine Hilfe für die gefragte Fachkraft und keine Erlaubnis, bis dahin zu gehen.",
  "Who is off, and by how much": "Wer wie weit daneben liegt",
  Why: "Warum",
  "With it": "Dazu",
  "Without a height nothing can be said about underweight.":
    "Ohne Körpergröße lässt sich zu Untergewicht nichts sagen.",
  "Yield factors came from {sources}.": "Garfaktoren stammen aus {sources}.",
  "a day": "am Tag",
  "a finer scale, more amounts on each side, or a line measured otherwise may open it":
    "eine feinere Waage, mehr Mengen zu beiden Seiten oder eine anders gemessene Zutat kann es möglich machen",
  "a run of {factor} times the recipe as written: {text}":
    "ein Durchgang mit dem {factor}-Fachen des Rezepts: {text}",
  "about 1 where a day holds 2 g of sodium and 3,510 mg of potassium, the WHO's limits for adults":
    "etwa 1, wo ein Tag 2 g Natrium und 3.510 mg Kalium enthält, die Grenzwerte der WHO für Erwachsene",
  "about {amount}": "etwa {amount}",
  "about {figure}, {range}": "etwa {figure}, {range}",
  "above an upper level: {foods}": "über einer Höchstmenge: {foods}",
  "above the upper level": "über der Höchstmenge",
  "above {from}": "über {from}",
  "add it to each portion at serving, uncooked": "bei jeder Portion beim Anrichten zugeben, ungegart",
  addedSugars: "Zuckerzusatz",
  "additions stay exact: no amounts that the kitchen can measure keep what must hold":
    "Zugaben bleiben exakt: Keine Mengen, die die Küche abmessen kann, halten das Verbindliche ein",
  "additions: the best amounts that were found; there may be better ones":
    "Zugaben: die besten gefundenen Mengen; es kann bessere geben",
  adjustable: "anpassbar",
  advice: "Empfehlung",
  alcohol: "Alkohol",
  "all or part assumed to be none": "ganz oder zum Teil als null angenommen",
  "all or part calculated": "ganz oder zum Teil berechnet",
  "all or part from a like food": "ganz oder zum Teil von einem ähnlichen Lebensmittel",
  "all or part worked out": "ganz oder zum Teil abgeleitet",
  "all portions of each person, on all days": "alle Portionen jeder Person, an allen Tagen",
  alphaLinolenicAcid: "Alpha-Linolensäure",
  "amounts are those of one full run": "die Mengen gelten für einen vollen Durchgang",
  "amounts are those of one run": "die Mengen gelten für einen Durchgang",
  "and {count} dishes more that are far from a normal portion":
    "und {count} weitere Gerichte, die weit von einer üblichen Portion entfernt sind",
  "aromatic amino acids": "aromatische Aminosäuren",
  "as cooked": "gegart",
  "as eaten": "verzehrfertig",
  "as eaten; where portions of one dish differ from time to time, their mean":
    "verzehrfertig; wo Portionen eines Gerichts von Mal zu Mal verschieden sind, ihr Mittel",
  "as purchased": "wie eingekauft",
  "as purchased, {grams} of it edible": "wie eingekauft, davon {grams} essbar",
  "as sold": "wie verkauft",
  "as the dish is": "wie das Gericht ist",
  "as written": "wie geschrieben",
  "assumed to follow an earlier yield for {count}": "bei {count} nach einem früheren Garfaktor angenommen",
  "at least": "mindestens",
  "at least {figure}": "mindestens {figure}",
  "at least {least}%, {kind}": "mindestens {least} %, {kind}",
  "at most": "höchstens",
  "at most {figure}": "höchstens {figure}",
  "at most {most}%, {kind}": "höchstens {most} %, {kind}",
  "at or above the reference": "am oder über dem Referenzwert",
  away: "nicht da",
  "b: all or part borrowed from a like food":
    "e: ganz oder zum Teil von einem ähnlichen Lebensmittel entlehnt",
  bakery: "Backwaren",
  baking: "Backzutaten",
  "below {limit}": "unter {limit}",
  between: "zwischen",
  borrowed: "entlehnt",
  breastfeeding: "Stillzeit",
  "c: all or part calculated by its source, not measured":
    "b: ganz oder zum Teil von der Quelle berechnet, nicht gemessen",
  calculated: "berechnet",
  "cannot be measured here": "lässt sich hier nicht abmessen",
  "cannot be shown to be below it": "lässt sich nicht als darunter liegend nachweisen",
  carbohydrate: "Kohlenhydrate",
  celery: "Sellerie",
  "cereals containing gluten": "glutenhaltiges Getreide",
  chilled: "Kühlregal",
  cocoa: "Kakao",
  "coeliac disease": "Zöliakie",
  component: "Nährstoff",
  cooked: "gegart",
  "cooked on the day it is eaten, since it holds rice and its recipe does not say how long it keeps (common practice, no source)":
    "am Tag des Verzehrs gekocht, da es Reis enthält und das Rezept nicht sagt, wie lange es hält (übliche Praxis, ohne Quelle)",
  "cooking takes off {lost}, more than the {water} of water that went into the pot: fat or drippings were lost too, or the yield is wrong; water as eaten is not known, and all else is taken to stay whole":
    "das Garen nimmt {lost} weg, mehr als die {water} Wasser, die in den Topf kamen: Es ging auch Fett oder Bratensaft verloren, oder der Garfaktor stimmt nicht; wie viel Wasser verzehrfertig bleibt, ist nicht bekannt, alles andere gilt als erhalten",
  "cooking times, pans, leavening and strong spices do not follow the amounts: check them by eye and taste":
    "Garzeiten, Formen, Triebmittel und kräftige Gewürze folgen den Mengen nicht: nach Augenmaß und Geschmack prüfen",
  "costs are rounded so that they add up to the total: each down, then the largest remainders up":
    "Kosten sind so gerundet, dass sie die Summe ergeben: erst alle ab, dann die größten Reste auf",
  "covered by packs, but not proven to be the best choice of them: {list}":
    "durch Packungen gedeckt, aber nicht als deren beste Wahl nachgewiesen: {list}",
  crustaceans: "Krebstiere",
  "d: all or part worked out: from other figures, or by what cooking leaves":
    "a: ganz oder zum Teil abgeleitet: aus anderen Werten oder aus dem, was nach dem Garen bleibt",
  dairy: "Milch und Milchprodukte",
  "dairy and alternatives": "Milchprodukte und Alternativen",
  data: "Daten",
  "days that are not wholly eaten in the plan do not count for the mean: {people}":
    "Tage, die nicht ganz im Plan gegessen werden, zählen nicht für das Mittel: {people}",
  derived: "abgeleitet",
  diabetes: "Diabetes",
  "dietary guideline": "Ernährungsempfehlung",
  drained: "abgetropft",
  "dried fruit": "Trockenobst",
  "dried fruit, nuts and seeds": "Trockenobst, Nüsse und Samen",
  drinks: "Getränke",
  dry: "trocken",
  "each food's cost is shared by what is eaten of it, so what is left over is paid for too":
    "die Kosten jedes Lebensmittels werden nach dem Gegessenen geteilt; was übrig bleibt, ist also mit bezahlt",
  "eaten on {days}, up to {kept} after it is cooked; the recipe gives {limit}: {text}":
    "gegessen am {days}, bis zu {kept} nach dem Kochen; das Rezept nennt {limit}: {text}",
  "eaten up to {kept} after it is cooked, and the recipe carries no storage limit: follow what its foods say of keeping, and local food-safety rules":
    "gegessen bis zu {kept} nach dem Kochen, und das Rezept nennt keine Haltbarkeit: befolgen, was die Lebensmittel zur Aufbewahrung sagen, und die örtlichen Regeln der Lebensmittelsicherheit",
  "eaten up to {kept} after it is cooked, and the recipe gives no number of days that it keeps: follow what it says of storage, and local food-safety rules":
    "gegessen bis zu {kept} nach dem Kochen, und das Rezept nennt keine Zahl haltbarer Tage: befolgen, was es zur Aufbewahrung sagt, und die örtlichen Regeln der Lebensmittelsicherheit",
  "eating disorder history": "Essstörung in der Vorgeschichte",
  egg: "Ei",
  eggs: "Eier",
  "energy from added sugars": "Energie aus Zuckerzusatz",
  "energy from alcohol": "Energie aus Alkohol",
  "energy from carbohydrate": "Energie aus Kohlenhydraten",
  "energy from fat": "Energie aus Fett",
  "energy from fibre": "Energie aus Ballaststoffen",
  "energy from protein": "Energie aus Eiweiß",
  "energy from saturated fat": "Energie aus gesättigten Fettsäuren",
  "energy need": "Energiebedarf",
  enough: "genug",
  everyone: "alle",
  factors: "Faktoren",
  "failed: {message} ({cell})": "fehlgeschlagen: {message} ({cell})",
  fat: "Fett",
  fibre: "Ballaststoffe",
  "fibre in 1,000 kcal": "Ballaststoffe in 1.000 kcal",
  fish: "Fisch",
  fixed: "fest",
  "for each unit of the factor": "je Einheit des Faktors",
  formula: "Formel",
  "free sugars": "freie Zucker",
  freeSugars: "freie Zucker",
  "from the tap, not bought: {list}": "aus der Leitung, nicht eingekauft: {list}",
  frozen: "Tiefkühlware",
  fruit: "Obst",
  "fruit and vegetables": "Obst und Gemüse",
  "full runs ({count}) and a rest, since {needs} is more than the {capacity} that it holds":
    "volle Durchgänge ({count}) und ein Rest, da {needs} mehr sind als die {capacity}, die hineingehen",
  g: "g",
  grains: "Getreide",
  "grains and pasta": "Getreide und Nudeln",
  "guidance level": "Orientierungshöchstwert",
  haemochromatosis: "Hämochromatose",
  herbs: "Kräuter",
  "herbs, spices and seaweed": "Kräuter, Gewürze und Algen",
  histidine: "Histidin",
  "holds {name}: served all the same. {because}": "enthält {name}: trotzdem serviert. {because}",
  hypertension: "Bluthochdruck",
  insulin: "Insulin",
  isoleucine: "Isoleucin",
  "its volume is added up line by line, and a mix mostly takes less (common practice, no source)":
    "das Volumen ist Zutat für Zutat zusammengezählt, und eine Mischung braucht meist weniger (übliche Praxis, ohne Quelle)",
  kcal: "kcal",
  "kidney disease": "Nierenkrankheit",
  l: "l",
  "largest ratio change: {line}": "größte Änderung im Verhältnis: {line}",
  leavening: "Triebmittel",
  "left in the pot": "bleibt im Topf",
  "left over": "übrig",
  "let it follow the pot: larger portions get more of it":
    "dem Topf folgen lassen: größere Portionen bekommen mehr davon",
  leucine: "Leucin",
  levothyroxine: "Levothyroxin",
  "limits of which a portion brings less than {share}, as far as is known, are left out: {count}":
    "Grenzwerte, von denen eine Portion, soweit bekannt, weniger als {share} liefert, sind weggelassen: {count}",
  linoleicAcid: "Linolsäure",
  lithium: "Lithium",
  lupin: "Lupine",
  lysine: "Lysin",
  "mao inhibitors": "MAO-Hemmer",
  mass: "Gewicht",
  "may be above an upper level: {foods}": "möglicherweise über einer Höchstmenge: {foods}",
  "may be above the upper level": "möglicherweise über der Höchstmenge",
  "may be past the level": "möglicherweise über der Grenze",
  "measurable amounts": "abmessbare Mengen",
  "measurable amounts: exact ones bring {exact}": "abmessbare Mengen: exakte liefern {exact}",
  meat: "Fleisch",
  "meat and poultry": "Fleisch und Geflügel",
  mg: "mg",
  milk: "Milch",
  ml: "ml",
  molluscs: "Weichtiere",
  mustard: "Senf",
  "n-6 to n-3 fatty acids": "n-6- zu n-3-Fettsäuren",
  "need {grams}": "gebraucht {grams}",
  "no body of the three sets a figure; a workshop of the UK Food Standards Agency found the ratio of little use beside the amounts of long-chain n-3":
    "keine der drei Stellen nennt einen Wert; ein Fachgespräch der britischen Lebensmittelbehörde fand das Verhältnis neben den Mengen langkettiger n-3-Fettsäuren wenig nützlich",
  "no data: {lines}": "keine Angaben: {lines}",
  "no dish takes anything": "kein Gericht nimmt etwas davon",
  "no figure for {state} is published here, and what stands leaves it out: {components}":
    "für {state} ist hier kein Wert veröffentlicht, und die genannten lassen es aus: {components}",
  "no figure without the day's energy: {components}": "kein Wert ohne die Tagesenergie: {components}",
  "no price known": "Preis nicht bekannt",
  "no price known of: {list}": "Preis nicht bekannt: {list}",
  "no refuse known, bought as eaten: {list}": "kein Abfall bekannt, eingekauft wie gegessen: {list}",
  "no target": "keine Vorgabe",
  "no upper level applies to {components}": "es gilt keine Höchstmenge für {components}",
  "no upper level available, which does not mean any amount is safe; ask a clinician or dietitian":
    "keine Höchstmenge verfügbar, was nicht heißt, dass jede Menge sicher ist; ärztlich oder eine Ernährungsfachkraft fragen",
  "no upper level: ask": "keine Höchstmenge: fragen",
  "no {components} data: {foods}": "keine Angaben zu {components}: {foods}",
  "no {components} data: {lines}": "keine Angaben zu {components}: {lines}",
  "nobody says how sure these foods' figures are, and they count as they stand: {foods}":
    "wie sicher die Werte dieser Lebensmittel sind, sagt niemand, sie zählen wie angegeben: {foods}",
  "nobody says how sure these lines are: {lines}": "wie sicher diese Zutaten sind, sagt niemand: {lines}",
  none: "nichts",
  "not all known: {parts}": "nicht alles bekannt: {parts}",
  "not known": "nicht bekannt",
  "not proven": "nicht nachgewiesen",
  "not proven to be the best: the search stopped at {nodes} choices; none changes ratios by less than {least}":
    "nicht als das Beste nachgewiesen: Die Suche endete nach {nodes} Möglichkeiten; keine ändert die Verhältnisse um weniger als {least}",
  "nothing is cooked": "es wird nichts gekocht",
  "nothing is known of: {components}": "nichts bekannt über: {components}",
  "nothing is known that needs a look": "nichts bekannt, das einen Blick braucht",
  "nothing is served, since what must hold cannot":
    "es wird nichts serviert, da das Verbindliche nicht einzuhalten ist",
  "nothing measurable within its bounds": "nichts Abmessbares innerhalb der Grenzen",
  "nothing of it": "nichts davon",
  "nothing of it is cooked for more than one person": "nichts davon wird für mehr als eine Person gekocht",
  "nothing served is said to hold it, and no food is silent":
    "nichts Serviertes enthält es laut Angaben, und kein Lebensmittel schweigt dazu",
  "nothing to cook: nobody eats of it until it is cooked again":
    "nichts zu kochen: Bis zum nächsten Kochen isst niemand davon",
  nuts: "Nüsse",
  "of animal or mixed origin: served all the same. {because}":
    "tierischen oder gemischten Ursprungs: trotzdem serviert. {because}",
  "of other sources": "aus anderen Quellen",
  "of {foods}": "von {foods}",
  oils: "Öle",
  "oils, vinegars and sauces": "Öle, Essige und Saucen",
  omega3: "Omega-3-Fettsäuren",
  "one portion": "eine Portion",
  "one pot: what is held keeps the same ratios for everyone":
    "ein Topf: Was zusammengehört, behält für alle dieselben Verhältnisse",
  "only supplements or what is added count towards the level of {components}":
    "auf die Höchstmenge zählt nur, was aus Präparaten oder Zusätzen kommt: {components}",
  "organic acids": "organische Säuren",
  "out of reach": "nicht erreichbar",
  over: "darüber",
  "over the range": "über der Spanne",
  "over {figure}": "über {figure}",
  "p: all or part assumed to be none": "n: ganz oder zum Teil als null angenommen",
  "part of a day's": "Teil eines Tages",
  "past the level": "über der Grenze",
  peanut: "Erdnuss",
  "per-portion": "je Portion",
  phenylketonuria: "Phenylketonurie",
  point: "ein Wert",
  polyols: "Zuckeralkohole",
  polyunsaturatedFat: "mehrfach ungesättigte Fettsäuren",
  "population average": "Bevölkerungsmittel",
  "population goal": "Bevölkerungsziel",
  "population guideline": "Bevölkerungsempfehlung",
  poultry: "Geflügel",
  pregnancy: "Schwangerschaft",
  pregnant: "schwanger",
  presumed: "angenommen",
  presumption: "Annahme",
  protein: "Eiweiß",
  "published as a range, and shown from end to end: {components} of {lines}":
    "als Spanne veröffentlicht und von Ende zu Ende gezeigt: {components} von {lines}",
  pulses: "Hülsenfrüchte",
  "pulses and tins": "Hülsenfrüchte und Konserven",
  "ranges hold about 95 times in 100, by how far analyses of foods and of cooking lie apart":
    "Spannen gelten etwa 95-mal in 100, nach der Streuung von Lebensmittelanalysen und Garverlusten",
  "ratios change by {drift} in all; rounding each line for itself, by {other}":
    "die Verhältnisse verschieben sich insgesamt um {drift}; jede Zutat für sich gerundet, um {other}",
  "ratios change by {drift} in all; rounding each line for itself, by {other}, past a limit":
    "die Verhältnisse verschieben sich insgesamt um {drift}; jede Zutat für sich gerundet, um {other}, über eine Grenze hinaus",
  raw: "roh",
  reached: "erreicht",
  "reckoned by a yield factor for {count}": "bei {count} mit einem Garfaktor berechnet",
  "reference intake range": "Referenzspanne",
  "requirements of a day are of adults neither pregnant nor breastfeeding: none is told for this person":
    "der Tagesbedarf gilt für Erwachsene, weder schwanger noch stillend: Für diese Person ist keiner angegeben",
  retention: "Nährstofferhalt",
  "rounded to what the kitchen can measure: {cooked} as cooked, where {planned} was planned, in the same ratios":
    "auf abmessbare Mengen gerundet: {cooked} gegart statt der geplanten {planned}, in denselben Verhältnissen",
  "rounded to what the kitchen can measure: {cooked} as cooked, where {planned} was planned; against the rest {line} moves most, by {drift}":
    "auf abmessbare Mengen gerundet: {cooked} gegart statt der geplanten {planned}; gegen den Rest verschiebt sich {line} am meisten, um {drift}",
  "safe and adequate intake": "sichere und angemessene Zufuhr",
  "safe intake": "sichere Zufuhr",
  "safe level of intake": "sichere Zufuhrmenge",
  salt: "Salz",
  saturatedFat: "gesättigte Fettsäuren",
  sauces: "Saucen",
  "sauces and pickles": "Saucen und Eingelegtes",
  "says gluten, but not of which cereal": "nennt Gluten, aber nicht, von welchem Getreide",
  "says nothing of allergens": "sagt nichts zu Allergenen",
  "says nothing of its origin": "sagt nichts zur Herkunft",
  score: "Score",
  seaweed: "Meeresalgen",
  seeds: "Samen",
  sesame: "Sesam",
  "several portions for one person, and no days named: how long they are kept is not known, so follow local food-safety rules":
    "mehrere Portionen für eine Person und keine Tage genannt: Wie lange sie aufbewahrt werden, ist nicht bekannt, also die örtlichen Regeln der Lebensmittelsicherheit befolgen",
  "shares of the pot are not weighed: in the scale's steps, some of it would be more than anybody's limits allow":
    "Anteile am Topf sind nicht gewogen: In den Schritten der Waage wäre es für jeden mehr, als seine Grenzen zulassen",
  "shares of the pot are not weighed: in the scale's steps, what must hold for someone would not":
    "Anteile am Topf sind nicht gewogen: In den Schritten der Waage wäre für jemanden das Verbindliche nicht einzuhalten",
  "shares of the pot are not weighed: the kitchen has no scale":
    "Anteile am Topf sind nicht gewogen: Die Küche hat keine Waage",
  "shares of the pot are not weighed: the scale's step is too coarse for so many":
    "Anteile am Topf sind nicht gewogen: Der Schritt der Waage ist für so viele zu grob",
  silent: "ohne Angabe",
  "sodium to potassium, mole for mole": "Natrium zu Kalium, Mol für Mol",
  "source {number}": "Quelle {number}",
  soya: "Soja",
  spices: "Gewürze",
  "spreads and syrups": "Aufstriche und Sirupe",
  "sulphur amino acids": "schwefelhaltige Aminosäuren",
  "sulphur dioxide and sulphites": "Schwefeldioxid und Sulfite",
  "summed of yields of single ingredients for {count}":
    "bei {count} aus Garfaktoren einzelner Zutaten summiert",
  sweeteners: "Süßungsmittel",
  "t: trace amounts not counted": "s: Spuren nicht mitgezählt",
  "taken to be that of the ingredients for {count}": "bei {count} dem der Zutaten gleichgesetzt",
  "the batch: the best amounts that were found; there may be better ones":
    "der Ansatz: die besten gefundenen Mengen; es kann bessere geben",
  "the cupboard has all that is needed": "der Vorrat deckt alles",
  "the pot stays in exact amounts: in measurable ones, what must hold for someone would not":
    "der Topf behält exakte Mengen: In abmessbaren wäre für jemanden das Verbindliche nicht einzuhalten",
  "the pot stays in exact amounts: in measurable ones, what must hold for someone would not, or a run would not go into its vessel":
    "der Topf behält exakte Mengen: In abmessbaren wäre für jemanden das Verbindliche nicht einzuhalten, oder ein Durchgang ginge nicht in sein Gefäß",
  "the pot: the best amounts that were found; there may be better ones":
    "der Topf: die besten gefundenen Mengen; es kann bessere geben",
  "the recipe has no method: what is dry and small goes in before what is bulky, or it clings to the sides (common practice, no source)":
    "das Rezept hat keine Zubereitung: Trockenes und Feines kommt vor Sperrigem hinein, sonst haftet es am Rand (übliche Praxis, ohne Quelle)",
  "the rest ({grams})": "der Rest ({grams})",
  "the rest is not known": "der Rest ist nicht bekannt",
  "the same for everyone": "für alle gleich",
  "the same is bought": "eingekauft wird dasselbe",
  "the whole": "das Ganze",
  "the yield is assumed: it is that of an earlier weighing, and what is cooked has changed since; weigh the cooked dish again":
    "der Garfaktor ist angenommen: Er stammt von einem früheren Wiegen, und was gegart wird, hat sich seither geändert; das fertige Gericht neu wiegen",
  threonine: "Threonin",
  "thyroid disease": "Schilddrüsenkrankheit",
  trace: "Spuren",
  "traces not counted": "Spuren nicht mitgezählt",
  transFat: "trans-Fettsäuren",
  "tree nuts": "Schalenfrüchte",
  tryptophan: "Tryptophan",
  "u: unverified: not yet read in its issuer's document or a faithful copy":
    "u: ungeprüft: noch nicht im Dokument der herausgebenden Stelle oder einer getreuen Kopie nachgelesen",
  "under the level": "unter der Grenze",
  "under the range": "unter der Spanne",
  "under {figure}": "unter {figure}",
  unknown: "unbekannt",
  "used on {days}, up to {kept} after it is made; its recipe gives {limit}: {text}":
    "verbraucht am {days}, bis zu {kept} nach der Zubereitung; das Rezept nennt {limit}: {text}",
  "used up to {kept} after it is made, and its recipe carries no storage limit: follow what its foods say of keeping, and local food-safety rules":
    "verbraucht bis zu {kept} nach der Zubereitung, und das Rezept nennt keine Haltbarkeit: befolgen, was die Lebensmittel zur Aufbewahrung sagen, und die örtlichen Regeln der Lebensmittelsicherheit",
  "used up to {kept} after it is made, and its recipe gives no number of days that it keeps: follow what it says of storage, and local food-safety rules":
    "verbraucht bis zu {kept} nach der Zubereitung, und das Rezept nennt keine Zahl haltbarer Tage: befolgen, was es zur Aufbewahrung sagt, und die örtlichen Regeln der Lebensmittelsicherheit",
  valine: "Valin",
  vegetables: "Gemüse",
  vinegar: "Essig",
  "vitamins are as before cooking, since no losses are given: {foods}":
    "Vitamine wie vor dem Garen, da keine Verluste angegeben sind: {foods}",
  warfarin: "Warfarin",
  "weighed after cooking for {count}": "bei {count} nach dem Garen gewogen",
  "weight includes peel and trimmings: {list}": "Gewicht mit Schale und Putzabfall: {list}",
  "weights to buy are rounded up to what a shop weighs out":
    "die Einkaufsmengen sind auf das aufgerundet, was ein Geschäft abwiegt",
  "what cooking leaves of {lines} is assumed: it was said of another food in the same place; give its own retention":
    "was vom Gehalt nach dem Garen bleibt, ist angenommen bei {lines}: Es galt einem anderen Lebensmittel an derselben Stelle; eigene Werte angeben",
  wheat: "Weizen",
  "when done": "fertig gegart",
  "whether it goes into {capacity} is not known, since nothing says the volume of {lines}: give the dish a density, those lines a volume, or the vessel a weight that it may hold":
    "ob es in {capacity} passt, ist nicht bekannt, da das Volumen von {lines} fehlt: dem Gericht eine Dichte geben, diesen Zutaten ein Volumen oder dem Gefäß ein Höchstgewicht",
  "with other amounts of {lines}": "mit anderen Mengen: {lines}",
  "with {lines}": "mit: {lines}",
  "within the range": "innerhalb der Spanne",
  "without {lines}": "ohne: {lines}",
  yield: "Garfaktor",
  "{amount} (as purchased)": "{amount} (wie eingekauft)",
  "{amount} as purchased": "{amount} wie eingekauft",
  "{amount} as purchased ({grams} edible)": "{amount} wie eingekauft ({grams} essbar)",
  "{amount} {name}": "{amount} {name}",
  "{caution} ({source})": "{caution} ({source})",
  "{columns}: lines count by their grams as weighed in, {raw} in all, and the batch by its {cooked} as eaten, so that the lines need not add up to it; at.sum adds up lines":
    "{columns}: Zutaten zählen mit ihren eingewogenen Gramm, {raw} insgesamt, der Ansatz mit seinen {cooked} verzehrfertig, so dass die Zutaten ihn nicht ergeben müssen; at.sum zählt Zutaten zusammen",
  "{components}: what is told makes {range}, and what is not told comes on top":
    "{components}: Das Bekannte ergibt {range}, das Unbekannte kommt hinzu",
  "{component} a day": "{component} am Tag",
  "{component} at least {figure}": "{component} mindestens {figure}",
  "{component} at most {figure}": "{component} höchstens {figure}",
  "{component} exactly {figure}": "{component} genau {figure}",
  "{component} {least} to {most}": "{component} {least} bis {most}",
  "{component} {off}": "{component} {off}",
  "{component}, {unit}": "{component}, {unit}",
  "{component}, {unit} in 100 g": "{component}, {unit} in 100 g",
  "{component}: from {least} at {start} to {most} at {end}.":
    "{component}: von {least} bei {start} bis {most} bei {end}.",
  "{component}: {amount}.": "{component}: {amount}.",
  "{component}: {brings} is above the upper level of {upper} a day":
    "{component}: {brings} liegt über der Höchstmenge von {upper} am Tag",
  "{component}: {brings} may be above the upper level of {upper} a day":
    "{component}: {brings} liegt möglicherweise über der Höchstmenge von {upper} am Tag",
  "{component}: {person}: {days}.": "{component}: {person}: {days}.",
  "{count} days": "{count} Tage",
  "{count} equal runs, since {needs} is more than the {capacity} that it holds":
    "{count} gleiche Durchgänge, da {needs} mehr sind als die {capacity}, die hineingehen",
  "{count} foods do not tell it": "{count} Lebensmittel geben es nicht an",
  "{count} full runs and a rest; amounts are those of a full run":
    "{count} volle Durchgänge und ein Rest; die Mengen gelten für einen vollen Durchgang",
  "{count} more": "{count} weitere",
  "{count} more foods are needed in other amounts, and the same is bought":
    "von {count} weiteren Lebensmitteln werden andere Mengen gebraucht; eingekauft wird dasselbe",
  "{count} more rows not shown": "{count} weitere Zeilen nicht gezeigt",
  "{count} more, under a twentieth of everyone's level":
    "{count} weitere, unter einem Zwanzigstel der Höchstmenge aller",
  "{count} of them cannot be reached.": "{count} davon sind nicht erreichbar.",
  "{count} portions": "{count} Portionen",
  "{count} runs; amounts are those of one": "{count} Durchgänge; die Mengen gelten für einen",
  "{count} times": "{count}-mal",
  "{count} × {pack}": "{count} × {pack}",
  "{day} away": "{day} nicht da",
  "{day} {figure}": "{day} {figure}",
  "{day} {figure}, not the whole day": "{day} {figure}, nicht der ganze Tag",
  "{day}: {dish}": "{day}: {dish}",
  "{demand} (firm)": "{demand} (verbindlich)",
  "{demand}: missed before rounding, and still": "{demand}: vor dem Runden verfehlt und weiterhin",
  "{demand}: off by more than its tolerance": "{demand}: weiter daneben als die Toleranz",
  "{demand}: there is nothing to take it of": "{demand}: Es gibt nichts, woraus es zu nehmen wäre",
  "{demand}: {size} over, {brought} in all": "{demand}: {size} zu viel, insgesamt {brought}",
  "{demand}: {size} short, {brought} in all": "{demand}: {size} zu wenig, insgesamt {brought}",
  "{dish}, {count} people, {person} the furthest off: {text}":
    "{dish}, {count} Personen, am weitesten daneben {person}: {text}",
  "{dish}, {person}: {text}": "{dish}, {person}: {text}",
  "{factor} times the recipe as written: {text}": "{factor}-mal das Rezept wie geschrieben: {text}",
  "{figure}": "{figure}",
  "{figure} ({marks})": "{figure} ({marks})",
  "{figure} b": "{figure} e",
  "{figure} c": "{figure} b",
  "{figure} d": "{figure} a",
  "{figure} h": "{figure} Std.",
  "{figure} min": "{figure} Min.",
  "{figure} p": "{figure} n",
  "{figure} t": "{figure} s",
  "{figure} u": "{figure} u",
  "{figure} with the digestibility given": "{figure} mit der angegebenen Verdaulichkeit",
  "{figure} °C": "{figure} °C",
  "{figure} °F": "{figure} °F",
  "{figure}%": "{figure} %",
  "{foods}: {text}": "{foods}: {text}",
  "{foods}: {text} ({source})": "{foods}: {text} ({source})",
  "{food} ({share} is eaten)": "{food} ({share} wird gegessen)",
  "{food} {grams}": "{food} {grams}",
  "{food} {why}: ask about {list}": "{food} {why}: fragen nach {list}",
  "{food} {why}: ask whether any is of animal origin":
    "{food} {why}: fragen, ob etwas tierischen Ursprungs ist",
  "{food}: keeps 1 day as bought, and is used on {late}: buy it later, or freeze it if its label allows":
    "{food}: hält eingekauft 1 Tag und wird am {late} gebraucht: später einkaufen oder einfrieren, wenn das Etikett es erlaubt",
  "{food}: keeps {days} days as bought, and is used on {late}: buy it later, or freeze it if its label allows":
    "{food}: hält eingekauft {days} Tage und wird am {late} gebraucht: später einkaufen oder einfrieren, wenn das Etikett es erlaubt",
  "{from} to {to}": "{from} bis {to}",
  "{grams} (about {pieces})": "{grams} (etwa {pieces})",
  "{grams} when done": "{grams} fertig gegart",
  "{grams}, {person}": "{grams}, {person}",
  "{hours} h {minutes} min": "{hours} Std. {minutes} Min.",
  "{least} to {most}": "{least} bis {most}",
  "{least} to {most}%, {kind}": "{least} bis {most} %, {kind}",
  "{level} ({authority} level: no {own} level at this age)":
    "{level} (Höchstmenge {authority}: {own} hat keine für dieses Alter)",
  "{lines} and {count} more": "{lines} und {count} weitere",
  "{line} {grams} a portion, the same for everyone": "{line} {grams} je Portion, für alle gleich",
  "{line}, {component}: {person} is above the level on single days, not on the mean: {days}":
    "{line}, {component}: {person} liegt an einzelnen Tagen über der Höchstmenge, im Mittel nicht: {days}",
  "{list} and {count} more": "{list} und {count} weitere",
  "{low} to {high}": "{low} bis {high}",
  "{meal}: how sure a portion's figures are": "{meal}: wie sicher die Werte einer Portion sind",
  "{meal}: portions as multiples of the recipe's": "{meal}: Portionen als Vielfache der Rezeptportion",
  "{meal}: what a portion brings": "{meal}: was eine Portion liefert",
  "{meal}: {dish}": "{meal}: {dish}",
  "{meal}: {text}": "{meal}: {text}",
  "{met} of {all}": "{met} von {all}",
  "{name} (left out)": "{name} (weggelassen)",
  "{name} ({source})": "{name} ({source})",
  "{name} is served all the same: {because}": "{name} wird trotzdem serviert: {because}",
  "{name} {factor} times.": "{name} {factor}-mal.",
  "{name}, for {people}": "{name}, für {people}",
  "{name}, g": "{name}, g",
  "{name}, {mass}: it goes into other dishes": "{name}, {mass}: kommt in andere Gerichte",
  "{name}, {state}": "{name}, {state}",
  "{name}: 1 portion": "{name}: 1 Portion",
  "{name}: 100 g as eaten": "{name}: 100 g verzehrfertig",
  "{name}: against label reference values": "{name}: gegen die Referenzmengen des Etiketts",
  "{name}: all of it": "{name}: alles",
  "{name}: allergens": "{name}: Allergene",
  "{name}: balance": "{name}: Ausgewogenheit",
  "{name}: cautions": "{name}: Hinweise",
  "{name}: figures as eaten": "{name}: Werte verzehrfertig",
  "{name}: fixed doses against daily upper levels": "{name}: feste Dosen gegen Tageshöchstmengen",
  "{name}: in what order": "{name}: in welcher Reihenfolge",
  "{name}: it is kept, the last of it for {day}": "{name}: wird aufbewahrt, das Letzte für {day}",
  "{name}: method": "{name}: Zubereitung",
  "{name}: one portion": "{name}: eine Portion",
  "{name}: one portion against a day ({authority})": "{name}: eine Portion gegen einen Tag ({authority})",
  "{name}: one portion by its factor": "{name}: eine Portion nach ihrem Faktor",
  "{name}: one portion, row by row": "{name}: eine Portion, Zeile für Zeile",
  "{name}: own columns": "{name}: eigene Spalten",
  "{name}: own rows": "{name}: eigene Zeilen",
  "{name}: pot {number}, for {people}": "{name}: Topf {number}, für {people}",
  "{name}: pot {number}, {version}, for {people}": "{name}: Topf {number}, {version}, für {people}",
  "{name}: quality of the protein": "{name}: Eiweißqualität",
  "{name}: served today": "{name}: heute serviert",
  "{name}: the pot": "{name}: der Topf",
  "{name}: the same for everyone": "{name}: für alle gleich",
  "{name}: together, against a day ({authority})": "{name}: zusammen gegen einen Tag ({authority})",
  "{name}: upper levels of a day": "{name}: Tageshöchstmengen",
  "{name}: what each person gets": "{name}: was jede Person bekommt",
  "{name}: what follows {axis}": "{name}: was aus {axis} folgt",
  "{name}: what it is for": "{name}: wofür es ist",
  "{name}: {count} portions": "{name}: {count} Portionen",
  "{name}: {recipe}, made first": "{name}: {recipe}, zuerst zubereitet",
  "{name}: {text}": "{name}: {text}",
  "{needs} is more than the {capacity} that it holds, by {excess}, and only one run is allowed: take a larger vessel, or make several runs":
    "{needs} sind um {excess} mehr als die {capacity}, die hineingehen, und nur ein Durchgang ist erlaubt: ein größeres Gefäß nehmen oder mehrere Durchgänge kochen",
  "{number} pots, one for each version": "{number} Töpfe, je Fassung einer",
  "{number} pots, since people need other ratios than the recipe's: {parts} of what it has":
    "{number} Töpfe, da andere Verhältnisse als die des Rezepts gebraucht werden: {parts} dessen, was es hat",
  "{of} in {part} of {name}: where it comes from": "{of} in {part} von {name}: woher es kommt",
  "{of}: the richest foods first": "{of}: die gehaltreichsten Lebensmittel zuerst",
  "{part} at {ratios}": "{part} mit {ratios}",
  "{pattern}: limiting: {limiting}": "{pattern}: limitierend: {limiting}",
  "{pattern}: lowest so far as is known: {limiting}": "{pattern}: am niedrigsten, soweit bekannt: {limiting}",
  "{people}, {version}": "{people}, {version}",
  "{people}: {note}": "{people}: {note}",
  "{person} is served what they avoid, as written down: {foods}":
    "{person} bekommt, wie vermerkt, was gemieden wird: {foods}",
  "{person} may be served what they avoid, ask about: {foods}":
    "{person} bekommt vielleicht, was gemieden wird, nachfragen zu: {foods}",
  "{person}: above on the mean of the days: {components}":
    "{person}: im Mittel der Tage darüber: {components}",
  "{person}: no {list}": "{person}: kein {list}",
  "{person}: {demand} {asked}: off by more than the tolerance in what the kitchen can measure of it":
    "{person}: {demand} {asked}: weiter daneben als die Toleranz in dem, was die Küche davon abmessen kann",
  "{person}: {demand} {asked}: {figure} as it is cooked, which is off by more than the tolerance":
    "{person}: {demand} {asked}: gekocht {figure}, weiter daneben als die Toleranz",
  "{person}: {text}": "{person}: {text}",
  "{points} percentage points": "{points} Prozentpunkte",
  "all dishes at least {times} times their recipes":
    "alle Gerichte mindestens das {times}-Fache ihrer Rezepte",
  "all dishes at most {times} times their recipes": "alle Gerichte höchstens das {times}-Fache ihrer Rezepte",
  "{dish} at least {times} times its recipe": "{dish} mindestens das {times}-Fache des Rezepts",
  "{dish} at most {times} times its recipe": "{dish} höchstens das {times}-Fache des Rezepts",
  "{line} at least {grams} a portion": "{line} mindestens {grams} je Portion",
  "{line} at least {times} times its part of {dish}":
    "{line} mindestens das {times}-Fache des Anteils an: {dish}",
  "{line} at most {grams} a portion": "{line} höchstens {grams} je Portion",
  "{line} at most {times} times its part of {dish}":
    "{line} höchstens das {times}-Fache des Anteils an: {dish}",
  "{meal} at least {share} of the day's energy": "{meal} mindestens {share} der Tagesenergie",
  "{meal} at most {share} of the day's energy": "{meal} höchstens {share} der Tagesenergie",
  "{pots} pots where {needed} would do on any one day, since {people} were fitted in other ratios on other days: plan again with what they are served first kept in the others, too":
    "{pots} Töpfe, wo an jedem einzelnen Tag {needed} genügten, da für {people} an anderen Tagen andere Verhältnisse gefunden wurden: neu planen und dabei das zuerst Servierte auch an den übrigen Tagen behalten",
  "{question}. Either {options}": "{question}. Entweder {options}",
  "{range} or more": "{range} oder mehr",
  "{share} of a day": "{share} eines Tages",
  "{share} of it": "{share} davon",
  "{share} of the protein comes from lines that tell all their amino acids":
    "{share} des Eiweißes stammen aus Zutaten, die alle ihre Aminosäuren angeben",
  "{share} of {level}": "{share} von {level}",
  "{share}% of {level}": "{share} % von {level}",
  "{source} (unverified)": "{source} (ungeprüft)",
  "{source} ({figures})": "{source} ({figures})",
  "{source}, release {release} ({figures})": "{source}, Ausgabe {release} ({figures})",
  "{spoon} is {figure}": "{spoon} entspricht {figure}",
  "{system} for 1 food": "{system} für 1 Lebensmittel",
  "{system} for {count} foods": "{system} für {count} Lebensmittel",
  "{text} ({source})": "{text} ({source})",
  "{text}, and {count} more": "{text}, und {count} weitere",
  "{times} times a normal portion of {normal}": "das {times}-Fache einer üblichen Portion von {normal}",
  "{times} times a normal portion of {normal}: less than half":
    "das {times}-Fache einer üblichen Portion von {normal}: weniger als die Hälfte",
  "{times} times a normal portion of {normal}: more than double":
    "das {times}-Fache einer üblichen Portion von {normal}: mehr als das Doppelte",
  "{version}: it shares the pot": "{version}: teilt den Topf",
  "{version}: nothing of it is cooked": "{version}: nichts davon wird gekocht",
  "{version}: one more pot to cook": "{version}: ein weiterer Topf",
  µg: "µg",
};
