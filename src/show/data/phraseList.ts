// All that `say` is asked for, one phrase a line, as read from the source: npm run phrases.
export const NOTES: string = ` and 
1 day
1 more food is needed in another amount, and the same is bought
1 more row not shown
1 portion
10 % more in it
10 % more left of it
10 % more of it
100 g
14 g is what the United States' adequate intakes of fibre were reckoned from
?
?: not known
A blank is not a guarantee: foods are taken at what their data say, and a kitchen can carry traces over. Read the labels.
A day on the mean
A day's reference
A level is of a whole day. Where none is published, no amount is proven safe.
A level is of a whole day: what else is eaten comes on top.
ADI
ADI: acceptable daily intake, for every day of a life
AI
AI: adequate intake, where no more exact figure could be set
AMDR
AMDR: acceptable range of intake, against chronic disease
About
Add when serving
Added
Age: {age}
All meals
Allergen
Allergens
Allergens are not known of {list}: unknown is not free from
Allergens: {list}
Already in the cupboard
Amino acid
Amino acids
Amount
Amounts to measure
Amounts to measure, the best that was found
Amounts to measure, the nearest to what was asked
As cooked
As eaten
As eaten, g
As made
As weighed in
As weighed in, g
Ask before serving whether any of {food} is of animal origin
Ask before serving whether {food} holds: {list}
Asked
At serving, each time
Away.
Batch
Before
Before serving
Body mass: {mass}
Bought otherwise than before
Bound
Brings
Buy
By
By day and person: {components}
By mass
By volume
CDRR
CDRR: intake above which eating less is expected to lower chronic disease; no level of harm
Came
Carbohydrates
Carotenoids
Caution
Cautions
Cautions about the person, where there are any, are not shown here: ask whoever planned this.
Cautions, person by person
Closest to the limit
Column
Component
Components that a source does not give were worked out from its other figures by {sources}.
Composition was reckoned in exact fractions with steelyard {version} from 1 recipe as eaten.
Composition was reckoned in exact fractions with steelyard {version} from {count} recipes as eaten.
Cooked for one person alone
Cooked ÷ raw mass of the line
Cooked ÷ raw mass of what is cooked
Cost
DV
DV: daily value for labels
Day
Days
Demand
Dish
Each of {count} full runs
Each of {count} runs
Eaten
Eaten on
Effect of rounding to kitchen measures
Energy
Energy by {system}
Energy from:
Energy is that of the sources, by {systems}.
Energy: {shares}
European Union
Exactly
FAO 2013, child
FAO 2013, infant
FAO 2013, older child, adolescent and adult
FAO/WHO 1991, preschool child
Factor
Fatty acids
Figure
Figures
Figures of foods came from {sources}; the number of figures is given in brackets.
Figures that no source gives and that were assumed to be zero: {count}.
First make {mass} of
Fixed doses
Food
Food and what is needed
Foods
Foods are taken at what their data say, and a kitchen can carry traces over. Read the labels.
Foods, what 100 g have
For
For all
For {person} alone: {lines}
From the cupboard
From the pot
From the pot, {when}
Furthest off
Gluten, but not said whether of wheat: {list}
Goes into the pot: 1, added at serving: 0
Group
Hatched: not known, there may be more.
Holds it
How much
Id
In 1 g of protein
In 100 g
In all
In stock
In the pot
Institute of Medicine 2002
Kitchen
Least
Left for serving: {lines}
Left over
Licence
Limit
Line
Line by line
Made first
Marks
Mass
Meal
Meals
Mean requirement of a day
Measure
Measured
Milk, eggs and honey are of animal origin. Fining agents and carriers of added vitamins are told by no table: the label or the maker has the last word.
Minerals
Missed
Most
Moved
NRV
NRV-NCD
NRV-NCD: nutrient reference value for labels, set from risk of disease
NRV-R
NRV-R: nutrient reference value for labels, set from requirements
NRV: nutrient reference value for labels
Nearest
Needed
No figure was missing.
Nordic countries
Not known
Not named in the method: {lines}
Not to be served: {list}
Note
Notes
Nothing is served, since what must hold cannot.
Nothing was known of {names}.
Now
Nutrient
Nutrients a day, mean of {days} days
Nutrients of all these portions
Nutrients of this portion
Of
Of WHO and FAO some minerals, vitamins of children under 7, and goals for populations are here: that nothing is said of protein, energy or other vitamins does not mean that nothing is recommended.
Of alpha-tocopherol equivalents the alpha-tocopherol alone is counted: there is at least that.
Of that in the pot, g
Of the Nordic countries only calcium, folate, iodine, magnesium, potassium, selenium, zinc and vitamins D and E are here: that nothing is said of protein, iron, sodium or other vitamins does not mean that nothing is recommended.
Of the pot
Of these figures, borrowed from another food: {borrowed}; calculated by their source: {calculated}.
Off by
One portion
One portion, g
Other
Out of reach: limits that no measurable amounts keep
PRI
PRI: population reference intake, enough for nearly everyone
Page
People
Per portion
Person
Portion
Portions
Portions met
Pot
Pots
Price
Proximates
Published for a day
RDA
RDA: recommended dietary allowance, enough for nearly everyone
RI
RI: recommended intake, enough for nearly everyone
RNI
RNI: reference nutrient intake, enough for nearly everyone
Ratios
Recipe
References are averages of many days, for healthy people: no portion has to meet them.
Release
Remaining
Row
Runs
SUL
SUL: safe upper level
Scaling
Served otherwise
Share
Share of a day
Share of it
Share of the energy
Share of the variance
Shopping list
Shopping list, {day}
Shopping list, {day}: for {first}
Shopping list, {day}: for {first} to {last}
Source
Sources
State
Step
TDI
TDI: tolerable daily intake, for every day of a life
Table
Take
Take care
The broken line marks the upper level, where it lies near.
The full run
The line marks a whole day.
The mass as eaten was {how}; a change of mass was taken to be water.
The rest
Then
These are calculations from published tables, not advice: a licensed practitioner decides what a person should eat.
These cannot stand together in one day: {demands}.
These cannot stand together in one day: {demands}; and {count} more.
Times
To buy
To buy, and its price
To cook
To cook: {day}
To decide
Total
Totals are lower bounds, since some ingredients say nothing of them, for {names}.
UL
UL: tolerable upper intake level
Unit
United Kingdom
United States and Canada
Upper level
Upper levels
Use
Value
Vitamins
WHO and FAO
WHO/FAO/UNU 2007
Weighed out for each person: {lines}
Went
What
What a portion brings, as eaten
What came and what went
What cooking leaves of components was reckoned line by line by {sources}.
What cooking takes of its constituents was taken off it by the same factors.
What goes in
What is cooked
What is not met
What is served, each time
What people avoid
What portions cost
What to check
What to do
When
Where it comes from
Where it stands
Where someone's authority has no level at their age, another's stands in and is named: a help for whoever is asked, and no leave to serve up to it.
Who is off, and by how much
Why
With it
Yield factors came from {sources}.
a day
a finer scale, more amounts on each side, or a line measured otherwise may open it
a run of {factor} times the recipe as written: {text}
about 1 where a day holds 2 g of sodium and 3,510 mg of potassium, the WHO's limits for adults
about {amount}
about {figure}, {range}
above an upper level: {foods}
above the upper level
above {from}
add it to each portion at serving, uncooked
addedSugars
additions stay exact: no amounts that the kitchen can measure keep what must hold
additions: the best amounts that were found; there may be better ones
adjustable
advice
alcohol
all dishes at least {times} times their recipes
all dishes at most {times} times their recipes
all or part assumed to be none
all or part calculated
all or part from a like food
all or part worked out
all portions of each person, on all days
alphaLinolenicAcid
amounts are those of one full run
amounts are those of one run
and {count} dishes more that are far from a normal portion
aromatic amino acids
as cooked
as eaten
as eaten; where portions of one dish differ from time to time, their mean
as purchased
as purchased, {grams} of it edible
as sold
as the dish is
as written
assumed to follow an earlier yield for {count}
at least
at least {figure}
at least {least}%, {kind}
at most
at most {figure}
at most {most}%, {kind}
at or above the reference
away
b: all or part borrowed from a like food
below {limit}
between
borrowed
breastfeeding
c: all or part calculated by its source, not measured
calculated
cannot be measured here
cannot be shown to be below it
carbohydrate
celery
cereals containing gluten
coeliac disease
component
cooked
cooked on the day it is eaten, since it holds rice and its recipe does not say how long it keeps (common practice, no source)
cooking takes off {lost}, more than the {water} of water that went into the pot: fat or drippings were lost too, or the yield is wrong; water as eaten is not known, and all else is taken to stay whole
cooking times, pans, leavening and strong spices do not follow the amounts: check them by eye and taste
costs are rounded so that they add up to the total: each down, then the largest remainders up
covered by packs, but not proven to be the best choice of them: {list}
crustaceans
d: all or part worked out: from other figures, or by what cooking leaves
data
days that are not wholly eaten in the plan do not count for the mean: {people}
derived
diabetes
dietary guideline
drained
dry
each food's cost is shared by what is eaten of it, so what is left over is paid for too
eaten on {days}, up to {kept} after it is cooked; the recipe gives {limit}: {text}
eaten up to {kept} after it is cooked, and the recipe carries no storage limit: follow what its foods say of keeping, and local food-safety rules
eaten up to {kept} after it is cooked, and the recipe gives no number of days that it keeps: follow what it says of storage, and local food-safety rules
eating disorder history
egg
energy from added sugars
energy from alcohol
energy from carbohydrate
energy from fat
energy from fibre
energy from protein
energy from saturated fat
energy need
enough
everyone
factors
failed: {message} ({cell})
fat
fibre
fibre in 1,000 kcal
fish
fixed
for each unit of the factor
formula
free sugars
freeSugars
from the tap, not bought: {list}
full runs ({count}) and a rest, since {needs} is more than the {capacity} that it holds
g
guidance level
haemochromatosis
histidine
holds {name}: served all the same. {because}
hypertension
insulin
isoleucine
its volume is added up line by line, and a mix mostly takes less (common practice, no source)
kcal
kidney disease
l
largest ratio change: {line}
left in the pot
left over
let it follow the pot: larger portions get more of it
leucine
levothyroxine
limits of which a portion brings less than {share}, as far as is known, are left out: {count}
linoleicAcid
lithium
lupin
lysine
mao inhibitors
mass
may be above an upper level: {foods}
may be above the upper level
may be past the level
measurable amounts
measurable amounts: exact ones bring {exact}
mg
milk
ml
molluscs
mustard
n-6 to n-3 fatty acids
need {grams}
no body of the three sets a figure; a workshop of the UK Food Standards Agency found the ratio of little use beside the amounts of long-chain n-3
no data: {lines}
no dish takes anything
no figure for {state} is published here, and what stands leaves it out: {components}
no figure without the day's energy: {components}
no price known
no price known of: {list}
no refuse known, bought as eaten: {list}
no target
no upper level applies to {components}
no upper level available, which does not mean any amount is safe; ask a clinician or dietitian
no upper level: ask
no {components} data: {foods}
no {components} data: {lines}
nobody says how sure these foods' figures are, and they count as they stand: {foods}
nobody says how sure these lines are: {lines}
none
not all known: {parts}
not known
not proven
not proven to be the best: the search stopped at {nodes} choices; none changes ratios by less than {least}
nothing is cooked
nothing is known of: {components}
nothing is known that needs a look
nothing is served, since what must hold cannot
nothing measurable within its bounds
nothing of it
nothing of it is cooked for more than one person
nothing served is said to hold it, and no food is silent
nothing to cook: nobody eats of it until it is cooked again
of animal or mixed origin: served all the same. {because}
of other sources
of {foods}
omega3
one portion
one pot: what is held keeps the same ratios for everyone
only supplements or what is added count towards the level of {components}
organic acids
out of reach
over
over the range
over {figure}
p: all or part assumed to be none
part of a day's
past the level
peanut
per-portion
phenylketonuria
point
polyols
polyunsaturatedFat
population average
population goal
population guideline
pregnancy
pregnant
presumed
presumption
protein
published as a range, and shown from end to end: {components} of {lines}
ranges hold about 95 times in 100, by how far analyses of foods and of cooking lie apart
ratios change by {drift} in all; rounding each line for itself, by {other}
ratios change by {drift} in all; rounding each line for itself, by {other}, past a limit
raw
reached
reckoned by a yield factor for {count}
reference intake range
requirements of a day are of adults neither pregnant nor breastfeeding: none is told for this person
retention
rounded to what the kitchen can measure: {cooked} as cooked, where {planned} was planned, in the same ratios
rounded to what the kitchen can measure: {cooked} as cooked, where {planned} was planned; against the rest {line} moves most, by {drift}
safe and adequate intake
safe intake
safe level of intake
saturatedFat
says gluten, but not of which cereal
says nothing of allergens
says nothing of its origin
score
sesame
several portions for one person, and no days named: how long they are kept is not known, so follow local food-safety rules
shares of the pot are not weighed: in the scale's steps, some of it would be more than anybody's limits allow
shares of the pot are not weighed: in the scale's steps, what must hold for someone would not
shares of the pot are not weighed: the kitchen has no scale
shares of the pot are not weighed: the scale's step is too coarse for so many
silent
sodium to potassium, mole for mole
source {number}
soya
sulphur amino acids
sulphur dioxide and sulphites
summed of yields of single ingredients for {count}
t: trace amounts not counted
taken to be that of the ingredients for {count}
the batch: the best amounts that were found; there may be better ones
the cupboard has all that is needed
the pot stays in exact amounts: in measurable ones, what must hold for someone would not
the pot stays in exact amounts: in measurable ones, what must hold for someone would not, or a run would not go into its vessel
the pot: the best amounts that were found; there may be better ones
the recipe has no method: what is dry and small goes in before what is bulky, or it clings to the sides (common practice, no source)
the rest ({grams})
the rest is not known
the same for everyone
the same is bought
the whole
the yield is assumed: it is that of an earlier weighing, and what is cooked has changed since; weigh the cooked dish again
threonine
thyroid disease
trace
traces not counted
transFat
tree nuts
tryptophan
u: unverified: not yet read in its issuer's document or a faithful copy
under the level
under the range
under {figure}
unknown
used on {days}, up to {kept} after it is made; its recipe gives {limit}: {text}
used up to {kept} after it is made, and its recipe carries no storage limit: follow what its foods say of keeping, and local food-safety rules
used up to {kept} after it is made, and its recipe gives no number of days that it keeps: follow what it says of storage, and local food-safety rules
valine
vitamins are as before cooking, since no losses are given: {foods}
warfarin
weighed after cooking for {count}
weight includes peel and trimmings: {list}
weights to buy are rounded up to what a shop weighs out
what cooking leaves of {lines} is assumed: it was said of another food in the same place; give its own retention
wheat
when done
whether it goes into {capacity} is not known, since nothing says the volume of {lines}: give the dish a density, those lines a volume, or the vessel a weight that it may hold
with other amounts of {lines}
with {lines}
within the range
without {lines}
yield
{amount} (as purchased)
{amount} as purchased
{amount} as purchased ({grams} edible)
{amount} {name}
{caution} ({source})
{columns}: lines count by their grams as weighed in, {raw} in all, and the batch by its {cooked} as eaten, so that the lines need not add up to it; at.sum adds up lines
{components}: what is told makes {range}, and what is not told comes on top
{component} a day
{component} at least {figure}
{component} at most {figure}
{component} exactly {figure}
{component} {least} to {most}
{component} {off}
{component}, {unit}
{component}, {unit} in 100 g
{component}: from {least} at {start} to {most} at {end}.
{component}: {amount}.
{component}: {brings} is above the upper level of {upper} a day
{component}: {brings} may be above the upper level of {upper} a day
{component}: {person}: {days}.
{count} days
{count} equal runs, since {needs} is more than the {capacity} that it holds
{count} foods do not tell it
{count} full runs and a rest; amounts are those of a full run
{count} more
{count} more foods are needed in other amounts, and the same is bought
{count} more rows not shown
{count} more, under a twentieth of everyone's level
{count} of them cannot be reached.
{count} portions
{count} runs; amounts are those of one
{count} times
{count} × {pack}
{day} away
{day} {figure}
{day} {figure}, not the whole day
{day}: {dish}
{demand} (firm)
{demand}: missed before rounding, and still
{demand}: off by more than its tolerance
{demand}: there is nothing to take it of
{demand}: {size} over, {brought} in all
{demand}: {size} short, {brought} in all
{dish} at least {times} times its recipe
{dish} at most {times} times its recipe
{dish}, {count} people, {person} the furthest off: {text}
{dish}, {person}: {text}
{factor} times the recipe as written: {text}
{figure}
{figure} ({marks})
{figure} b
{figure} c
{figure} d
{figure} h
{figure} min
{figure} p
{figure} t
{figure} u
{figure} with the digestibility given
{figure} °C
{figure} °F
{figure}%
{foods}: {text}
{foods}: {text} ({source})
{food} ({share} is eaten)
{food} {grams}
{food} {why}: ask about {list}
{food} {why}: ask whether any is of animal origin
{food}: keeps 1 day as bought, and is used on {late}: buy it later, or freeze it if its label allows
{food}: keeps {days} days as bought, and is used on {late}: buy it later, or freeze it if its label allows
{from} to {to}
{grams} (about {pieces})
{grams} when done
{grams}, {person}
{hours} h {minutes} min
{least} to {most}
{least} to {most}%, {kind}
{level} ({authority} level: no {own} level at this age)
{lines} and {count} more
{line} at least {grams} a portion
{line} at least {times} times its part of {dish}
{line} at most {grams} a portion
{line} at most {times} times its part of {dish}
{line} {grams} a portion, the same for everyone
{line}, {component}: {person} is above the level on single days, not on the mean: {days}
{list} and {count} more
{low} to {high}
{meal} at least {share} of the day's energy
{meal} at most {share} of the day's energy
{meal}: how sure a portion's figures are
{meal}: portions as multiples of the recipe's
{meal}: what a portion brings
{meal}: {dish}
{meal}: {text}
{met} of {all}
{name} (left out)
{name} ({source})
{name} is served all the same: {because}
{name} {factor} times.
{name}, for {people}
{name}, g
{name}, {mass}: it goes into other dishes
{name}, {state}
{name}: 1 portion
{name}: 100 g as eaten
{name}: against label reference values
{name}: all of it
{name}: allergens
{name}: balance
{name}: cautions
{name}: figures as eaten
{name}: fixed doses against daily upper levels
{name}: in what order
{name}: it is kept, the last of it for {day}
{name}: method
{name}: one portion
{name}: one portion against a day ({authority})
{name}: one portion by its factor
{name}: one portion, row by row
{name}: own columns
{name}: own rows
{name}: pot {number}, for {people}
{name}: pot {number}, {version}, for {people}
{name}: quality of the protein
{name}: served today
{name}: the pot
{name}: the same for everyone
{name}: together, against a day ({authority})
{name}: upper levels of a day
{name}: what each person gets
{name}: what follows {axis}
{name}: what it is for
{name}: {count} portions
{name}: {recipe}, made first
{name}: {text}
{needs} is more than the {capacity} that it holds, by {excess}, and only one run is allowed: take a larger vessel, or make several runs
{number} pots, one for each version
{number} pots, since people need other ratios than the recipe's: {parts} of what it has
{of} in {part} of {name}: where it comes from
{of}: the richest foods first
{part} at {ratios}
{pattern}: limiting: {limiting}
{pattern}: lowest so far as is known: {limiting}
{people}, {version}
{people}: {note}
{person} is served what they avoid, as written down: {foods}
{person} may be served what they avoid, ask about: {foods}
{person}: above on the mean of the days: {components}
{person}: no {list}
{person}: {demand} {asked}: off by more than the tolerance in what the kitchen can measure of it
{person}: {demand} {asked}: {figure} as it is cooked, which is off by more than the tolerance
{person}: {text}
{points} percentage points
{pots} pots where {needed} would do on any one day, since {people} were fitted in other ratios on other days: plan again with what they are served first kept in the others, too
{question}. Either {options}
{range} or more
{share} of a day
{share} of it
{share} of the protein comes from lines that tell all their amino acids
{share} of {level}
{share}% of {level}
{source} (unverified)
{source} ({figures})
{source}, release {release} ({figures})
{spoon} is {figure}
{system} for 1 food
{system} for {count} foods
{text} ({source})
{text}, and {count} more
{times} times a normal portion of {normal}
{times} times a normal portion of {normal}: less than half
{times} times a normal portion of {normal}: more than double
{version}: it shares the pot
{version}: nothing of it is cooked
{version}: one more pot to cook
µg`;
