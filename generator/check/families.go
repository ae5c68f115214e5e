package check

import (
	"baybinder/generator/read/bind"
	"baybinder/generator/read/decode"
	"baybinder/generator/read/syntax"
)

// The families, each in the order in which its rules are looked for. A new
// rule is one line here, one file beside this one and its cases.
var (
	// How a text reads.
	formRules = []*Rule{
		{Rule: &notAStep, Procedure: runNotAStep},
		{Rule: &pictureWithoutWords, Procedure: runPictureWithoutWords, Translations: true},
		{Rule: &HollowLink, Procedure: runHollowLink, Translations: true},
		{Rule: &faultCode, Procedure: runFaultCode, Translations: true},
	}

	// How a text is written.
	writingRules = []*Rule{
		{Rule: &tooLong, Text: runTooLong},
		{Rule: &twoActions, Text: runTwoActions},
		{Rule: &vague, Text: runVague},
		{Rule: &noTime, Procedure: runNoTime},
		{Rule: &passive, Text: runPassive},
		{Rule: &unwritten, Procedure: runUnwritten},
	}

	// What fields hold, beyond what decode can see of one alone.
	fieldRules = []*Rule{
		{Rule: &decode.MissingField, Manual: runHoldFields, Entries: true},
		{Rule: &decode.MissingField, Manual: runAgainIn, Entries: true},
		{Rule: &decode.WrongType, Manual: runProtectiveWear, Entries: true},
		{Rule: &decode.WrongType, Manual: runLockKind, Entries: true},
		{Rule: &decode.Quantity, Manual: runSupplyUnit, Entries: true},
		{Rule: &decode.Quantity, Procedure: runSupplyAmount},
		{Rule: &decode.Quantity, Procedure: runToolAmount},
		{Rule: &decode.Quantity, Manual: runWholeCounts, Entries: true},
		{Rule: &decode.Quantity, Manual: runLimitOf, Entries: true},
		{Rule: &decode.Quantity, Manual: runNear, Entries: true},
		{Rule: &bind.UnknownReference, Manual: runKnownSign, Entries: true},
		{Rule: &bind.UnknownReference, Procedure: runWithin},
		{Rule: &bind.UnknownReference, Manual: runFileNotRead},
		{Rule: &syntax.DuplicateID, Procedure: runListedTwice},
	}

	// Double entry.
	listRules = []*Rule{
		{Rule: &NotListed, Procedure: runNotListed},
		{Rule: &NotUsed, Procedure: runNotUsed},
		{Rule: &wrongSupply, Procedure: runWrongSupply},
	}

	// What is told of danger.
	hazardRules = []*Rule{
		{Rule: &hazardIncomplete, Manual: runHazardIncomplete, Entries: true},
		{Rule: &harmLowered, Procedure: runHarmLowered},
		{Rule: &signalWordTyped, Procedure: runSignalWordTyped, Translations: true},
		{Rule: &signalWordTyped, Manual: runSignalWordInRegister, Entries: true},
	}

	// What a procedure performs, and who may.
	callRules = []*Rule{
		{Rule: &callCycle, Manual: runCallCycle},
		{Rule: &CallsDraft, Procedure: runCallsDraft},
		{Rule: &MissingQualification, Procedure: runMissingQualification},
	}

	// What jobs that were done tell.
	recordRules = []*Rule{
		{Rule: &recordDiffers, Manual: runRecordDiffers},
		{Rule: &recordDisagrees, Manual: runRecordDisagrees},
		{Rule: &recordDisagrees, Manual: runImpossibleRow},
		{Rule: &recordTwice, Manual: runRecordTwice},
		{Rule: &rowMissing, Manual: runRowMissing},
		{Rule: &notAuthorised, Manual: runNotAuthorised},
		{Rule: &bind.UnknownPerson, Manual: runRecordPerson},
		{Rule: &notQualified, Manual: runNotQualified},
	}

	// What is said in other languages.
	languageRules = []*Rule{
		{Rule: &notTranslated, Procedure: runNotTranslated, Translations: true},
		{Rule: &notTranslated, Manual: runWordsNotTranslated},
		{Rule: &translationDiffers, Procedure: runTranslationDiffers, Translations: true},
		{Rule: &translationDiffers, Manual: runWordsDiffer},
	}

	// What dates and fingerprints tell.
	datedRules = []*Rule{
		{Rule: &ChangedSinceIssue, Together: runChangedSinceIssue},
		{Rule: &ChangedSinceIssue, Manual: runTranslationChanged},
		{Rule: &reviewDue, Manual: runReviewDue},
		{Rule: &reviewDue, Manual: runInspectionDue},
		{Rule: &samePerson, Manual: runSamePerson},
		{Rule: &ReadingStale, Manual: runReadingStale},
		{Rule: &readingOverdue, Manual: runReadingOverdue},
		{Rule: &roleExpired, Manual: runRoleExpired},
		{Rule: &unwitnessed, Manual: runUnwitnessed},
		{Rule: &notYet, Manual: runNotYet},
		{Rule: &unknownFingerprint, Manual: runUnknownFingerprint},
		{Rule: &wordsAltered, Manual: runWordsAltered},
		{Rule: &decode.Quantity, Manual: runPlanWithin},
	}
)
