using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Accounts;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class MembershipConfiguration : IEntityTypeConfiguration<Membership>
{
    public void Configure(EntityTypeBuilder<Membership> membership)
    {
        membership.ToTable("Memberships");
        membership.HasKey(it => new { it.AccountId, it.StudioId });
        membership.HasOne<Account>().WithMany().HasForeignKey(it => it.AccountId).OnDelete(DeleteBehavior.Cascade);
        membership.HasOne<Studio>().WithMany().HasForeignKey(it => it.StudioId).OnDelete(DeleteBehavior.Restrict);
    }
}
